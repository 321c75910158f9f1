package dev.gambrel.conformance.laws;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * A slip of the hand.
 *
 * @param kind what is done
 * @param at where, counted round the text
 * @param length how many characters
 * @param words what is put in
 */
record Edit(Kind kind, int at, int length, String words) {
    enum Kind {
        INSERT,
        DELETE,
        REPLACE,
        DOUBLE,
        SWAP_CHARACTERS,
        DROP_LINE,
        DOUBLE_LINE,
        SWAP_LINES
    }

    /** The text after the slip. */
    String of(String text) {
        if (text.isEmpty()) {
            return words;
        }
        int from = at % text.length();
        int to = Math.min(text.length(), from + length);
        String before = text.substring(0, from);
        String under = text.substring(from, to);
        String after = text.substring(to);
        return switch (kind) {
            case INSERT -> before + words + under + after;
            case DELETE -> before + after;
            case REPLACE -> before + words + after;
            case DOUBLE -> before + under + under + after;
            case SWAP_CHARACTERS -> before + new StringBuilder(under).reverse() + after;
            case DROP_LINE, DOUBLE_LINE, SWAP_LINES -> ofLines(new ArrayList<>(List.of(text.split("\n", -1))));
        };
    }

    private String ofLines(List<String> lines) {
        int line = at % lines.size();
        switch (kind) {
            case DROP_LINE -> lines.remove(line);
            case DOUBLE_LINE -> lines.add(line, lines.get(line));
            default -> Collections.swap(lines, line, (line + length) % lines.size());
        }
        return String.join("\n", lines);
    }
}
