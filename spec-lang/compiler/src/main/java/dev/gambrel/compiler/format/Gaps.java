package dev.gambrel.compiler.format;

import dev.gambrel.compiler.parse.Word;
import dev.gambrel.compiler.parse.Word.Kind;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * What stands between the words of a line: nothing before a comma, inside round brackets and in a fraction; one space
 * round the other signs, two before a comment. Elsewhere a gap of any width becomes one space, and what is written
 * without a gap, such as 233A, 6-8 or O+, is not torn apart.
 */
final class Gaps {
    private static final Set<Kind> SPACED = EnumSet.of(
            Kind.ARROW,
            Kind.PLUS_MINUS,
            Kind.PERCENT,
            Kind.COMMA,
            Kind.SIGN,
            Kind.OPENING_BRACE,
            Kind.CLOSING_BRACE,
            Kind.OPENING_BRACKET,
            Kind.CLOSING_BRACKET);

    /** What a term of an equation begins with. */
    private static final Set<Kind> TERM = EnumSet.of(Kind.WORD, Kind.NUMBER, Kind.OPENING_BRACKET);

    private Gaps() {}

    /** The words from one place to before another as they stand in a line. */
    static String join(List<Word> words, int from, int to) {
        StringBuilder out = new StringBuilder();
        for (int at = from; at < to; at++) {
            out.append(at == from ? "" : before(words, at)).append(spelt(words.get(at)));
        }
        return out.toString();
    }

    private static String before(List<Word> words, int at) {
        Word left = words.get(at - 1);
        Word right = words.get(at);
        if (right.kind() == Kind.COMMENT) {
            return "  ";
        } else if (isTight(left.kind(), right.kind()) || isInFraction(words, at) || isInFraction(words, at - 1)) {
            return "";
        }
        boolean apart = !touches(left, right) || isSpaced(words, at - 1) || isSpaced(words, at);
        return apart ? " " : "";
    }

    private static boolean isSpaced(List<Word> words, int at) {
        Kind kind = words.get(at).kind();
        return SPACED.contains(kind) || kind == Kind.PLUS && !endsClass(words, at);
    }

    /** Whether a sign belongs to the word before it, as in O+ and R-, and no term of an equation comes after it. */
    static boolean endsClass(List<Word> words, int at) {
        Word sign = words.get(at);
        return (sign.kind() == Kind.PLUS || sign.kind() == Kind.MINUS)
                && at > 0
                && words.get(at - 1).kind() == Kind.WORD
                && touches(words.get(at - 1), sign)
                && (at + 1 == words.size()
                        || !TERM.contains(words.get(at + 1).kind())
                        || !touches(sign, words.get(at + 1)));
    }

    private static boolean touches(Word left, Word right) {
        return left.span().end() == right.span().start();
    }

    private static boolean isTight(Kind left, Kind right) {
        return right == Kind.COMMA || right == Kind.CLOSING_BRACKET || left == Kind.OPENING_BRACKET;
    }

    /** Whether a word is the slash between two figures. */
    private static boolean isInFraction(List<Word> words, int at) {
        return words.get(at).kind() == Kind.SLASH
                && at > 0
                && at + 1 < words.size()
                && words.get(at - 1).kind() == Kind.NUMBER
                && words.get(at + 1).kind() == Kind.NUMBER;
    }

    private static String spelt(Word word) {
        return switch (word.kind()) {
            case ARROW -> "->";
            case PLUS_MINUS -> "±";
            case COMMENT -> word.text().stripTrailing();
            default -> word.text();
        };
    }
}
