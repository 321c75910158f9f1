package dev.gambrel.compiler.format;

import dev.gambrel.compiler.parse.Word;
import dev.gambrel.compiler.parse.Word.Kind;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;

/**
 * Divides words into lines. A block is indented by two spaces more than the line that opens it; a line that goes on
 * from a comma or a sign by four, so that it is not taken for what a brace holds. Empty lines are kept one at a time, and none at
 * either end of the text.
 *
 * <p>Neighbours are the lines that stand directly in one block with no empty line between; what is in further braces
 * between them stands apart.
 */
final class LineDivider {
    /** A comma, and the signs of an equation. */
    private static final Set<Kind> GOES_ON = EnumSet.of(Kind.COMMA, Kind.SIGN, Kind.PLUS, Kind.MINUS, Kind.SLASH);

    private static final int BLOCK = 2;
    private static final int CONTINUATION = 4;

    private final List<Line> lines = new ArrayList<>();
    /** The neighbours in each open block, the innermost first. */
    private final Deque<Integer> open = new ArrayDeque<>();

    private int groups;
    private boolean goesOnAfter;
    private boolean emptyIsDue;

    private LineDivider() {
        openBlock();
    }

    static List<Line> divide(List<Word> words) {
        LineDivider divider = new LineDivider();
        int start = 0;
        for (int at = 0; at < words.size(); at++) {
            if (words.get(at).kind() == Kind.LINE_END) {
                divider.line(words.subList(start, at));
                start = at + 1;
            }
        }
        divider.line(words.subList(start, words.size()));
        return divider.lines;
    }

    private void line(List<Word> words) {
        if (words.isEmpty()) {
            emptyIsDue = !lines.isEmpty();
            return;
        }
        if (emptyIsDue) {
            open.pop();
            openBlock();
            lines.add(new Line(List.of(), 0, false, open.peek()));
            emptyIsDue = false;
        }
        int closing = closingFirst(words);
        closeBlocks(closing);
        boolean goesOn = goesOnAfter && closing == 0;
        int indent = BLOCK * (open.size() - 1) + (goesOn ? CONTINUATION : 0);
        lines.add(new Line(words, indent, goesOn, open.peek()));
        for (int at = closing; at < words.size(); at++) {
            follow(words, at);
        }
    }

    private static int closingFirst(List<Word> words) {
        int closing = 0;
        while (closing < words.size() && words.get(closing).kind() == Kind.CLOSING_BRACE) {
            closing++;
        }
        return closing;
    }

    private void follow(List<Word> words, int at) {
        Word word = words.get(at);
        if (word.kind() == Kind.OPENING_BRACE) {
            openBlock();
        } else if (word.kind() == Kind.CLOSING_BRACE) {
            closeBlocks(1);
        }
        if (word.kind() != Kind.COMMENT) {
            goesOnAfter = GOES_ON.contains(word.kind()) && !Gaps.endsClass(words, at);
        }
    }

    private void openBlock() {
        open.push(groups++);
    }

    /** A brace too many closes nothing. */
    private void closeBlocks(int count) {
        for (int i = 0; i < count && open.size() > 1; i++) {
            open.pop();
        }
    }
}
