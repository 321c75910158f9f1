package dev.gambrel.fuzzing;

import dev.gambrel.compiler.parse.SpecParser;
import dev.gambrel.compiler.parse.Word;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.SourceText;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** The words of a text: in order, each as it is written, with nothing but blanks between them. */
public final class WordsTarget {
    private static final SpecParser PARSER = new SpecParser(Limits.DEFAULT);

    private WordsTarget() {}

    /**
     * Holds one text to it.
     *
     * @param file any bytes
     */
    public static void fuzzerTestOneInput(byte[] file) {
        SourceText text = new SourceText("any.cuts", new String(file, StandardCharsets.UTF_8));
        Result<List<Word>> read = PARSER.words(text);
        FindingsHold.all(read.diagnostics());
        Holds.isSame(read, PARSER.words(text), "what is read twice");
        read.value().ifPresent(words -> areWhole(text, words));
    }

    private static void areWhole(SourceText text, List<Word> words) {
        int at = 0;
        for (Word word : words) {
            FindingsHold.within(text, word.span());
            int from = at;
            Holds.isTrue(from <= word.span().start(), () -> "words lie over one another at " + from);
            isBlank(text, from, word.span().start());
            Holds.isSame(word.text(), text.slice(word.span()), "a word and what is written");
            at = word.span().end();
        }
        isBlank(text, at, text.text().length());
    }

    private static void isBlank(SourceText text, int from, int to) {
        String gap = text.text().substring(from, to);
        Holds.isTrue(
                gap.codePoints().allMatch(c -> Character.isWhitespace(c) || Character.isSpaceChar(c) || c == 0xFEFF),
                () -> "no word: “" + gap + "”");
    }
}
