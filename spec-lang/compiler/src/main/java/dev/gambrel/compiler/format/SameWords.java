package dev.gambrel.compiler.format;

import dev.gambrel.compiler.parse.Word;
import dev.gambrel.compiler.parse.Word.Kind;
import dev.gambrel.text.Span;
import java.util.ArrayList;
import java.util.List;

/**
 * Whether two texts have the same words in the same lines: every comment, name, figure and sign, in the same order, with
 * lines ending after the same ones. Reading depends on nothing else, so such texts are read the same and have the
 * same findings, whether they can be read or not.
 *
 * <p>Words are the same when their characters are. Only the two spellings of ± and of the arrow, the several of a line end,
 * blanks after a comment and the number of empty lines make no difference.
 */
final class SameWords {
    private SameWords() {}

    /** Where the first word stands that the other text lacks; nowhere if there is none. */
    static List<Span> firstChange(List<Word> words, List<Word> others) {
        List<Word> mine = withoutEmptyLines(words);
        List<Word> theirs = withoutEmptyLines(others);
        for (int at = 0; at < mine.size(); at++) {
            if (at == theirs.size() || !isSame(mine.get(at), theirs.get(at))) {
                return List.of(mine.get(at).span());
            }
        }
        return mine.size() == theirs.size() ? List.of() : List.of(end(words));
    }

    private static Span end(List<Word> words) {
        int end = words.isEmpty() ? 0 : words.get(words.size() - 1).span().end();
        return new Span(end, end);
    }

    private static boolean isSame(Word one, Word other) {
        return one.kind() == other.kind()
                && switch (one.kind()) {
                    case ARROW, PLUS_MINUS, LINE_END -> true;
                    case COMMENT ->
                        one.text().stripTrailing().equals(other.text().stripTrailing());
                    default -> one.text().equals(other.text());
                };
    }

    private static List<Word> withoutEmptyLines(List<Word> words) {
        List<Word> kept = new ArrayList<>(words.size());
        for (Word word : words) {
            boolean isEmptyLine = word.kind() == Kind.LINE_END
                    && (kept.isEmpty() || kept.get(kept.size() - 1).kind() == Kind.LINE_END);
            if (!isEmptyLine) {
                kept.add(word);
            }
        }
        if (!kept.isEmpty() && kept.get(kept.size() - 1).kind() == Kind.LINE_END) {
            kept.remove(kept.size() - 1);
        }
        return kept;
    }
}
