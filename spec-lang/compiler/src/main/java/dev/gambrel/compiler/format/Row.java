package dev.gambrel.compiler.format;

import dev.gambrel.compiler.parse.Word;
import dev.gambrel.compiler.parse.Word.Kind;
import java.util.List;

/**
 * A line in the pieces that may stand in columns with those of its neighbours: its share, where a percentage follows a
 * keyword and a name without a comma, and its arrow, where no comma stands before it. A line whose pieces are wider than
 * 40 characters stands in no column: it would push the figures of its neighbours out of sight.
 *
 * @param plain the whole line, one space between its words
 * @param lead the words before the share, or before the arrow where there is no share
 * @param share from the share to the arrow, or to the end; empty where there is none
 * @param arrow from the arrow to the end; empty where there is none
 */
record Row(String plain, String lead, String share, String arrow) {
    private static final int WIDEST = 40;

    static Row of(Line line) {
        List<Word> words = line.words();
        String plain = Gaps.join(words, 0, words.size());
        Row row = line.goesOn() ? outside(plain) : inPieces(plain, words);
        return row.isNarrow() ? row : outside(plain);
    }

    private static Row outside(String plain) {
        return new Row(plain, "", "", "");
    }

    private static Row inPieces(String plain, List<Word> words) {
        int head = headOf(words);
        int arrow = indexOf(Kind.ARROW, words, head);
        int share = shareIn(words, arrow < 0 ? head : arrow);
        int lead = share > 0 ? share : arrow;
        if (lead < 1) {
            return outside(plain);
        }
        int beforeArrow = arrow < 0 ? words.size() : arrow;
        return new Row(
                plain,
                Gaps.join(words, 0, lead),
                share > 0 ? Gaps.join(words, share, beforeArrow) : "",
                Gaps.join(words, beforeArrow, words.size()));
    }

    /** How many words stand before the first comma, brace, comment or equals sign. */
    private static int headOf(List<Word> words) {
        int at = 0;
        while (at < words.size()) {
            switch (words.get(at).kind()) {
                case COMMA, OPENING_BRACE, CLOSING_BRACE, COMMENT, SIGN -> {
                    return at;
                }
                default -> at++;
            }
        }
        return at;
    }

    private static int indexOf(Kind kind, List<Word> words, int end) {
        for (int at = 0; at < end; at++) {
            if (words.get(at).kind() == kind) {
                return at;
            }
        }
        return -1;
    }

    /** Where a share begins that follows a keyword and a name; 0 if none does. */
    private static int shareIn(List<Word> words, int end) {
        int percent = indexOf(Kind.PERCENT, words, end);
        if (percent < 1) {
            return 0;
        }
        int start = numberBefore(words, percent);
        boolean isSecondFigure = start > 1 && joinsFigures(words.get(start - 1));
        int first = isSecondFigure ? numberBefore(words, start - 1) : start;
        int share = isSecondFigure && first < start - 1 ? first : start;
        return share > 1 && share < percent ? share : 0;
    }

    /** Where the number begins that ends before a word: with its sign, and with all of a fraction. */
    private static int numberBefore(List<Word> words, int end) {
        int start = end;
        while (start > 0 && isOfNumber(words.get(start - 1).kind())) {
            start--;
        }
        return start;
    }

    private static boolean isOfNumber(Kind kind) {
        return kind == Kind.NUMBER || kind == Kind.SLASH || kind == Kind.MINUS;
    }

    private static boolean joinsFigures(Word word) {
        return word.kind() == Kind.PLUS_MINUS || word.text().equalsIgnoreCase("to");
    }

    private boolean isNarrow() {
        return width(lead) <= WIDEST && whole() <= WIDEST && (arrow.isEmpty() || width(share) <= WIDEST);
    }

    /** How wide the share is before its decimal point. */
    int whole() {
        int end = 0;
        while (end < share.length() && share.charAt(end) != '.' && share.charAt(end) != ' ') {
            end++;
        }
        return end;
    }

    static int width(String text) {
        return text.codePointCount(0, text.length());
    }
}
