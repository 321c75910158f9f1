package dev.gambrel.compiler.internal;

import dev.gambrel.compiler.internal.grammar.GambrelLexer;
import java.util.HashMap;
import java.util.Locale;
import java.util.Map;
import org.antlr.v4.runtime.CharStream;
import org.antlr.v4.runtime.Lexer;
import org.antlr.v4.runtime.Token;

/** Tells keywords from other words, whatever their case. */
public abstract class KeywordLexer extends Lexer {
    /** Made when first asked, since the generated class that it reads is made ready after this one. */
    private static final class Keywords {
        private static final Map<String, Integer> BY_WORD = keywords();
    }

    /**
     * A lexer over a text.
     *
     * @param input the text
     */
    protected KeywordLexer(CharStream input) {
        super(input);
    }

    private static Map<String, Integer> keywords() {
        Map<String, Integer> keywords = new HashMap<>();
        for (int type = GambrelLexer.LANGUAGE; type <= GambrelLexer.WASTE; type++) {
            keywords.put(word(type), type);
        }
        keywords.put("carcase", GambrelLexer.CARCASS);
        return Map.copyOf(keywords);
    }

    /**
     * The keyword of a kind of token.
     *
     * @param type from {@code LANGUAGE} to {@code WASTE}
     * @return the word in small letters
     */
    public static String word(int type) {
        return GambrelLexer.VOCABULARY
                .getSymbolicName(type)
                .toLowerCase(Locale.ROOT)
                .replace('_', '-');
    }

    @Override
    public Token emit() {
        if (_type == GambrelLexer.WORD) {
            String text = getText();
            Integer keyword = Keywords.BY_WORD.get(text);
            if (keyword == null) {
                keyword = Keywords.BY_WORD.get(text.toLowerCase(Locale.ROOT));
            }
            if (keyword != null) {
                _type = keyword;
            }
        }
        return super.emit();
    }
}
