package dev.gambrel.reports.svg;

import dev.gambrel.diagnostic.Visible;
import java.util.ArrayList;
import java.util.List;

/** Words on as many lines as they need. */
public final class Wrapped {
    private Wrapped() {}

    /**
     * Breaks a text between words, and within a word that fits on no line.
     *
     * @param text from anywhere; what hides or steers is shown as its number
     * @param lettering how it is set
     * @param width how much room there is, enough for a letter
     * @return its lines, one or more, none wider than that
     */
    public static List<String> lines(String text, Lettering lettering, double width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : Visible.text(text).split(" ", -1)) {
            String next = line.isEmpty() ? word : line + " " + word;
            if (lettering.width(next) <= width) {
                line.replace(0, line.length(), next);
                continue;
            }
            if (!line.isEmpty()) {
                lines.add(line.toString());
            }
            line.setLength(0);
            line.append(lastOf(word, lettering, width, lines));
        }
        lines.add(line.toString());
        return List.copyOf(lines);
    }

    private static String lastOf(String word, Lettering lettering, double width, List<String> lines) {
        String left = word;
        while (lettering.width(left) > width) {
            int end = 0;
            int next = left.offsetByCodePoints(0, 1);
            do {
                end = next;
                next = end == left.length() ? end : left.offsetByCodePoints(end, 1);
            } while (next > end && lettering.width(left.substring(0, next)) <= width);
            if (end == left.length()) {
                return left;
            }
            lines.add(left.substring(0, end));
            left = left.substring(end);
        }
        return left;
    }
}
