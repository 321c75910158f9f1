package dev.gambrel.diagnostic;

import dev.gambrel.text.SourceText;
import dev.gambrel.text.Span;

/**
 * One line of a text with marks under some of it, in columns of a terminal: tabs are four blanks, wide East Asian
 * characters and emoji take two columns, combining marks none.
 */
record Underline(String line, String indent, String marks) {
    private static final int LONGEST_LINE = 160;
    private static final String TAB = "    ";

    static Underline of(SourceText text, int lineNumber, Span span, char mark) {
        Span line = text.line(lineNumber);
        int start = Math.min(span.start(), line.end());
        int end = Math.max(start, Math.min(span.end(), line.end()));
        int from = whole(text, Math.max(line.start(), Math.min(start - LONGEST_LINE / 2, line.end() - LONGEST_LINE)));
        int to = whole(text, Math.min(line.end(), from + LONGEST_LINE));
        String before = shown(text, from, Math.min(start, to));
        String under = shown(text, Math.min(start, to), Math.min(end, to));
        String after = shown(text, Math.min(end, to), to);
        String shownLine = (from > line.start() ? "…" : "") + before + under + after + (to < line.end() ? "…" : "");
        int indent = columns(before) + (from > line.start() ? 1 : 0);
        return new Underline(
                shownLine, " ".repeat(indent), Character.toString(mark).repeat(Math.max(1, columns(under))));
    }

    /** The offset, or the one before where a character of two UTF-16 units would be cut in half. */
    private static int whole(SourceText text, int offset) {
        String all = text.text();
        boolean half = offset > 0
                && offset < all.length()
                && Character.isSurrogatePair(all.charAt(offset - 1), all.charAt(offset));
        return half ? offset - 1 : offset;
    }

    private static String shown(SourceText text, int from, int to) {
        return Visible.text(text.slice(new Span(from, to)).replace("\t", TAB));
    }

    private static int columns(String text) {
        return text.codePoints().map(Underline::columns).sum();
    }

    private static int columns(int codePoint) {
        return switch (Character.getType(codePoint)) {
            case Character.NON_SPACING_MARK, Character.ENCLOSING_MARK -> 0;
            default -> isWide(codePoint) ? 2 : 1;
        };
    }

    /** The blocks of the Unicode standard whose characters are wide (Annex 11, East Asian Width). */
    private static boolean isWide(int c) {
        return c >= 0x1100 && c <= 0x115F
                || c >= 0x2E80 && c <= 0xA4CF
                || c >= 0xAC00 && c <= 0xD7A3
                || c >= 0xF900 && c <= 0xFAFF
                || c >= 0xFE30 && c <= 0xFE6F
                || c >= 0xFF00 && c <= 0xFF60
                || c >= 0x1F300 && c <= 0x1FAFF
                || c >= 0x20000 && c <= 0x3FFFD;
    }
}
