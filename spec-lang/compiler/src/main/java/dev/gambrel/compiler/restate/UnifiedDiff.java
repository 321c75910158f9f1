package dev.gambrel.compiler.restate;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * Edits as a unified diff (POSIX.1-2017, diff -u). What changed is known from the edits and need not be searched for. Every edit lies in one
 * line; lines end at a line feed, so that a carriage return before it belongs to the line and is kept.
 */
final class UnifiedDiff {
    private static final char DELETE = 0x7F;
    private static final int CONTEXT = 3;
    private static final String NO_END = "\n\\ No newline at end of file\n";

    private final List<Row> rows = new ArrayList<>();
    private final StringBuilder out = new StringBuilder();

    /** A line of the diff; kept lines begin with a space. */
    private record Row(char mark, String line) {
        boolean isChange() {
            return mark != ' ';
        }

        String text() {
            return mark + line + (line.endsWith("\n") ? "" : NO_END);
        }
    }

    private UnifiedDiff(RestatedText text) {
        int start = 0;
        List<TextEdit> edits = text.edits();
        for (String line : lines(text.before().text())) {
            int here = countIn(edits, line, start);
            List<String> after = lines(edited(line, start, edits.subList(0, here)));
            edits = edits.subList(here, edits.size());
            boolean isFirstKept = after.get(0).equals(line);
            if (!isFirstKept) {
                rows.add(new Row('-', line));
            }
            for (int i = 0; i < after.size(); i++) {
                rows.add(new Row(isFirstKept && i == 0 ? ' ' : '+', after.get(i)));
            }
            start += line.length();
        }
    }

    static String of(RestatedText text) {
        UnifiedDiff diff = new UnifiedDiff(text);
        String name = named(text.before().name());
        diff.out.append("--- ").append(name).append("\n+++ ").append(name).append('\n');
        diff.hunks();
        return diff.out.toString();
    }

    /** A name with a blank in it ends in a tab; one that could be taken for more than a name stands in quotation marks, as git has it. */
    private static String named(String name) {
        boolean isPlain = name.chars().noneMatch(c -> c < ' ' || c == DELETE || c == '"' || c == '\\');
        if (isPlain) {
            return name.indexOf(' ') < 0 ? name : name + '\t';
        }
        StringBuilder quoted = new StringBuilder("\"");
        for (char c : name.toCharArray()) {
            if (c == '"' || c == '\\') {
                quoted.append('\\').append(c);
            } else if (c < ' ' || c == DELETE) {
                quoted.append(String.format(Locale.ROOT, "\\%03o", (int) c));
            } else {
                quoted.append(c);
            }
        }
        return quoted.append('"').toString();
    }

    /** With their line ends. */
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

    private static String edited(String line, int start, List<TextEdit> edits) {
        StringBuilder edited = new StringBuilder(line);
        for (int i = edits.size() - 1; i >= 0; i--) {
            TextEdit edit = edits.get(i);
            edited.replace(edit.start() - start, edit.end() - start, edit.words());
        }
        return edited.toString();
    }

    /** How many of the edits begin in a line; what is put in right after a line feed belongs to the next. */
    private static int countIn(List<TextEdit> edits, String line, int start) {
        int last = start + line.length() - (line.endsWith("\n") ? 1 : 0);
        int count = 0;
        while (count < edits.size() && edits.get(count).start() <= last) {
            count++;
        }
        return count;
    }

    private void hunks() {
        int from = 0;
        int before = 1;
        int after = 1;
        while (from < rows.size()) {
            int first = nextChange(from);
            if (first == rows.size()) {
                return;
            }
            int start = Math.max(from, first - CONTEXT);
            before += start - from;
            after += start - from;
            int end = endOfHunk(first);
            List<Row> hunk = rows.subList(start, end);
            int old = (int) hunk.stream().filter(row -> row.mark() != '+').count();
            int fresh = (int) hunk.stream().filter(row -> row.mark() != '-').count();
            out.append("@@ -").append(before).append(',').append(old);
            out.append(" +").append(after).append(',').append(fresh).append(" @@\n");
            hunk.forEach(row -> out.append(row.text()));
            before += old;
            after += fresh;
            from = end;
        }
    }

    private int nextChange(int from) {
        int at = from;
        while (at < rows.size() && !rows.get(at).isChange()) {
            at++;
        }
        return at;
    }

    /** Changes with no more kept lines between them than both would show make one hunk. */
    private int endOfHunk(int change) {
        int end = change;
        int next = change;
        while (next < rows.size() && next - end <= 2 * CONTEXT) {
            end = next;
            while (end < rows.size() && rows.get(end).isChange()) {
                end++;
            }
            next = nextChange(end);
        }
        return Math.min(rows.size(), end + CONTEXT);
    }
}
