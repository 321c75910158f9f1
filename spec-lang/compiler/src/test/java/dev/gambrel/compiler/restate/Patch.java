package dev.gambrel.compiler.restate;

import java.util.ArrayList;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;

/** Takes a unified diff as its readers do: by the numbers of lines, and only where the lines that stay are there. */
final class Patch {
    private static final Pattern HUNK = Pattern.compile("@@ -(\\d+),(\\d+) \\+(\\d+),(\\d+) @@");
    private static final String NO_END = "\\ No newline at end of file\n";

    private Patch() {}

    static String apply(String diff, String before) {
        List<String> old = lines(before);
        StringBuilder after = new StringBuilder();
        int at = 0;
        List<String> rows = lines(diff);
        for (int i = 2; i < rows.size(); i++) {
            String row = rows.get(i);
            Matcher hunk = HUNK.matcher(row);
            if (hunk.lookingAt()) {
                int start = Integer.parseInt(hunk.group(1)) - 1;
                while (at < start) {
                    after.append(old.get(at++));
                }
                continue;
            } else if (row.equals(NO_END)) {
                continue;
            }
            boolean hasNoEnd = i + 1 < rows.size() && rows.get(i + 1).equals(NO_END);
            String line = hasNoEnd ? row.substring(1, row.length() - 1) : row.substring(1);
            if (row.charAt(0) != '+' && !old.get(at++).equals(line)) {
                throw new IllegalStateException("line " + at + " is not " + line);
            }
            if (row.charAt(0) != '-') {
                after.append(line);
            }
        }
        while (at < old.size()) {
            after.append(old.get(at++));
        }
        return after.toString();
    }

    private static List<String> lines(String text) {
        List<String> lines = new ArrayList<>();
        int start = 0;
        for (int end = text.indexOf('\n'); end >= 0; end = text.indexOf('\n', start)) {
            lines.add(text.substring(start, end + 1));
            start = end + 1;
        }
        if (start < text.length()) {
            lines.add(text.substring(start));
        }
        return lines;
    }
}
