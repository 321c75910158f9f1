package dev.gambrel.conformance.laws;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;

/**
 * A statement's own lines, and the statements in its braces. Reads well-formed specifications only, whose braces open at
 * the end of a line and close on a line of their own; comments and empty lines are left out.
 *
 * @param head the lines up to the opening brace, or all of them
 * @param body what is in the braces; empty without braces
 * @param hasBraces whether there are any
 */
record Lines(List<String> head, List<Lines> body, boolean hasBraces) {
    /** The statements of a text. */
    static List<Lines> of(String text) {
        List<String> lines = new ArrayList<>();
        text.lines().map(Lines::withoutComment).filter(line -> !line.isBlank()).forEach(lines::add);
        return statements(lines);
    }

    private static List<Lines> statements(List<String> open) {
        List<Lines> statements = new ArrayList<>();
        while (!open.isEmpty()) {
            if (open.get(0).strip().equals("}")) {
                open.remove(0);
                return statements;
            }
            statements.add(statement(open));
        }
        return statements;
    }

    private static Lines statement(List<String> open) {
        List<String> head = new ArrayList<>();
        do {
            head.add(open.remove(0));
        } while (goesOn(head.get(head.size() - 1).stripTrailing()));
        boolean braces = head.get(head.size() - 1).stripTrailing().endsWith("{");
        return new Lines(head, braces ? statements(open) : List.of(), braces);
    }

    /** After a comma, and in an equation after a sign. */
    private static boolean goesOn(String line) {
        return !line.isEmpty() && ",+-×*/=".indexOf(line.charAt(line.length() - 1)) >= 0;
    }

    private static String withoutComment(String line) {
        boolean quoted = false;
        for (int i = 0; i < line.length(); i++) {
            if (line.charAt(i) == '"' && (i == 0 || line.charAt(i - 1) != '\\')) {
                quoted = !quoted;
            } else if (!quoted && line.startsWith("//", i)) {
                return line.substring(0, i);
            }
        }
        return line;
    }

    /** The statements in another order, within each pair of braces too; the language is still said first. */
    static String shuffled(List<Lines> statements, Random chance) {
        StringBuilder out = new StringBuilder();
        List<Lines> rest = new ArrayList<>(statements);
        rest.stream().filter(Lines::isLanguage).findFirst().ifPresent(language -> language.write(out, chance));
        rest.removeIf(Lines::isLanguage);
        writeAll(rest, out, chance);
        return out.toString();
    }

    private boolean isLanguage() {
        return head.get(0).strip().startsWith("language");
    }

    private static void writeAll(List<Lines> statements, StringBuilder out, Random chance) {
        List<Lines> mixed = new ArrayList<>(statements);
        Collections.shuffle(mixed, chance);
        mixed.forEach(statement -> statement.write(out, chance));
    }

    private void write(StringBuilder out, Random chance) {
        head.forEach(line -> out.append(line).append('\n'));
        if (hasBraces) {
            writeAll(body, out, chance);
            out.append("}\n");
        }
    }
}
