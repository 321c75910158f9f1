package dev.gambrel.compiler.format;

import dev.gambrel.compiler.parse.Word;
import dev.gambrel.compiler.parse.Word.Kind;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * What stands between the words of a line: nothing before a comma, inside round brackets and in a fraction; one space
 * round the other signs, two before a comment. Elsewhere a gap of any width becomes one space, and what is written
 * without a gap, such as 233A or 6-8, is not torn apart.
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
        boolean apart = right.span().start() > left.span().end();
        return apart || SPACED.contains(left.kind()) || SPACED.contains(right.kind()) ? " " : "";
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
