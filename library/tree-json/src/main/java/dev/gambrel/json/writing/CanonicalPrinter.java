package dev.gambrel.json.writing;

import dev.gambrel.diagnostic.Visible;
import dev.gambrel.quantity.Quantity;
import java.math.BigDecimal;
import java.util.List;
import java.util.Locale;

/**
 * Prints JSON in the one form that equal trees share.
 *
 * <p>Two spaces for each level and LF at each line's end. A list or object that holds no object stands on one line if
 * it fits into {@value #WIDTH} characters. Numbers are plain decimals; very large and very small ones have a power of ten.
 * Control, direction, private and unpaired
 * characters are escaped, so that nothing in the text can hide or turn what stands beside it.
 */
final class CanonicalPrinter {
    static final int WIDTH = 100;

    private final StringBuilder out = new StringBuilder(4096);

    private CanonicalPrinter() {}

    static String print(Canonical value) {
        CanonicalPrinter printer = new CanonicalPrinter();
        printer.value(value, 0);
        return printer.out.append('\n').toString();
    }

    private void value(Canonical value, int depth) {
        if (value instanceof Canonical.Words words) {
            quoted(words.text());
        } else if (value instanceof Canonical.Figure figure) {
            out.append(figure(figure.value()));
        } else if (!fitsOneLine(value, depth)) {
            members(value, depth, "\n" + "  ".repeat(depth + 1), ",\n" + "  ".repeat(depth + 1));
        }
    }

    /** A power of ten stands for zeros beyond the digits that a number may have, so that three characters do not become ten thousand. */
    private static String figure(BigDecimal value) {
        boolean isPlain = value.scale() >= 0
                ? value.scale() <= 2 * Quantity.MAX_DIGITS
                : value.precision() - (long) value.scale() <= Quantity.MAX_DIGITS;
        return isPlain ? value.toPlainString() : value.toString();
    }

    private boolean fitsOneLine(Canonical value, int depth) {
        if (holdsObject(value)) {
            return false;
        }
        int start = out.length();
        members(value, depth, "", ", ");
        if (out.length() - start > WIDTH) {
            out.setLength(start);
            return false;
        }
        return true;
    }

    private static boolean holdsObject(Canonical value) {
        return inside(value).stream().anyMatch(inner -> inner instanceof Canonical.Fields || holdsObject(inner));
    }

    private static List<Canonical> inside(Canonical value) {
        if (value instanceof Canonical.Items list) {
            return list.items();
        }
        return value instanceof Canonical.Fields fields
                ? List.copyOf(fields.values().values())
                : List.of();
    }

    private void members(Canonical value, int depth, String start, String between) {
        String end = start.isEmpty() ? "" : "\n" + "  ".repeat(depth);
        if (value instanceof Canonical.Fields fields) {
            out.append('{');
            String before = start;
            for (var field : fields.values().entrySet()) {
                out.append(before);
                quoted(field.getKey());
                out.append(": ");
                value(field.getValue(), depth + 1);
                before = between;
            }
            out.append(end).append('}');
        } else {
            out.append('[');
            String before = start;
            for (Canonical item : inside(value)) {
                out.append(before);
                value(item, depth + 1);
                before = between;
            }
            out.append(end).append(']');
        }
    }

    private void quoted(String text) {
        out.append('"');
        text.codePoints().forEach(this::character);
        out.append('"');
    }

    private void character(int codePoint) {
        if (codePoint == '"' || codePoint == '\\') {
            out.append('\\').append((char) codePoint);
        } else if (Visible.isHidden(codePoint)) {
            for (char unit : Character.toChars(codePoint)) {
                out.append(String.format(Locale.ROOT, "\\u%04x", (int) unit));
            }
        } else {
            out.appendCodePoint(codePoint);
        }
    }
}
