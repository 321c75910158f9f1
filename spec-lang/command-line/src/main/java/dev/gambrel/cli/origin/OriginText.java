package dev.gambrel.cli.origin;

import dev.gambrel.cli.origin.report.OriginSection;
import dev.gambrel.cli.origin.report.StatedValue;
import dev.gambrel.compiler.origin.Origin;
import dev.gambrel.diagnostic.Visible;
import dev.gambrel.tree.Source;
import java.util.List;
import java.util.function.Function;

/** Origins as lines of text for people: what, where, and as written; below a figure what it rests on, in full. */
final class OriginText {
    private OriginText() {}

    /**
     * Prints sections.
     *
     * @param sections in the order in which they shall be read
     * @return lines ending in a line feed, an empty one between sections
     */
    public static String print(List<OriginSection> sections) {
        StringBuilder out = new StringBuilder();
        int what = widest(sections, StatedValue::what);
        int place = widest(sections, value -> place(value.origin()));
        for (OriginSection section : sections) {
            out.append(out.isEmpty() ? "" : "\n")
                    .append(Visible.text(section.heading()))
                    .append('\n');
            section.values().forEach(value -> print(value, what, place, out));
        }
        return out.toString();
    }

    private static int widest(List<OriginSection> sections, Function<StatedValue, String> column) {
        return sections.stream()
                .flatMap(section -> section.values().stream())
                .mapToInt(value -> width(column.apply(value)))
                .max()
                .orElse(0);
    }

    private static void print(StatedValue value, int what, int place, StringBuilder out) {
        line(value.what(), what, value.origin(), place, out);
        String below = " ".repeat(what + place + 6);
        for (Source source : value.origin().sources()) {
            out.append(below).append(Visible.text(cited(source))).append('\n');
        }
        if (value.isFigure() && value.origin().sources().isEmpty()) {
            out.append(below).append("no source stated\n");
        }
        for (Origin earlier : value.origin().revised()) {
            line("before", what, earlier, place, out);
        }
    }

    private static void line(String what, int whatWidth, Origin origin, int placeWidth, StringBuilder out) {
        out.append("  ")
                .append(padded(what, whatWidth))
                .append("  ")
                .append(padded(place(origin), placeWidth))
                .append("  ")
                .append(words(origin))
                .append('\n');
    }

    /** "house tests, measured: twelve hoggets" */
    private static String cited(Source source) {
        return source.name() + ", " + source.kind().words() + ": " + source.citation();
    }

    private static String place(Origin origin) {
        return Visible.text(origin.file()) + ", line " + origin.position().line();
    }

    /** What goes on over several lines is shown on one. */
    private static String words(Origin origin) {
        return Visible.text(origin.words().replaceAll("\\s+", " "));
    }

    private static String padded(String text, int width) {
        return text + " ".repeat(Math.max(0, width - width(text)));
    }

    private static int width(String text) {
        return text.codePointCount(0, text.length());
    }
}
