package dev.gambrel.reports.picture;

import dev.gambrel.batches.sheets.SheetReport;
import dev.gambrel.reports.svg.Ink;
import dev.gambrel.reports.svg.Lettering;
import dev.gambrel.reports.svg.Picture;
import dev.gambrel.reports.svg.Point;
import dev.gambrel.reports.svg.Shape;
import dev.gambrel.reports.svg.Shape.Anchor;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** Where the grams of a carcass went: meat, bone, trim, loss, each beside what was expected. */
public final class GramsPicture {
    private static final String TITLE = "Where the grams went";
    private static final double WIDTH = 680;
    private static final double ROW = 30;
    private static final double TOP = 30;
    private static final double BARS_START = 116;
    private static final double BARS_END = 440;
    private static final double EXPECTED = 512;
    private static final double ACTUAL = 590;
    private static final double DIFFERENCE = 676;

    private final List<Shape> shapes = new ArrayList<>();
    private final double zero;
    private final double pixelsPerGram;

    private GramsPicture(List<Grams> rows) {
        long least = Math.min(0, rows.stream().mapToLong(Grams::least).min().orElse(0));
        long most = Math.max(1, rows.stream().mapToLong(Grams::most).max().orElse(1));
        this.pixelsPerGram = (BARS_END - BARS_START) / (most - least);
        this.zero = BARS_START - least * pixelsPerGram;
    }

    /**
     * Draws a test by its weights in balance.
     *
     * @param report what is said of the sheet
     * @return the picture; the figures on it add up as they are shown
     */
    public static Picture of(SheetReport report) {
        List<Grams> rows = Grams.of(report.whereItWent());
        return new GramsPicture(rows).picture(rows);
    }

    private Picture picture(List<Grams> rows) {
        heading();
        for (int i = 0; i < rows.size(); i++) {
            row(rows.get(i), TOP + 4 + i * ROW);
        }
        double end = TOP + 4 + rows.size() * ROW;
        shapes.add(Shape.line(new Point(zero, TOP), new Point(zero, end), Ink.BLACK));
        total(rows, end);
        String told = rows.stream().map(Grams::sentence).collect(Collectors.joining("; "));
        return new Picture(TITLE, told + ".", 0, WIDTH, end + 24, shapes);
    }

    private void words(double x, double y, String text, Anchor anchor, Lettering lettering) {
        shapes.add(new Shape.Words(new Point(x, y), text, anchor, lettering));
    }

    private void heading() {
        shapes.add(new Shape.Box(new Point(BARS_START, 4), 24, 10, Ink.SAND, Ink.GREY));
        words(BARS_START + 30, 13, "expected", Anchor.START, Lettering.SMALL);
        shapes.add(new Shape.Box(new Point(BARS_START + 100, 4), 24, 10, Ink.BLUE, Ink.BLUE));
        words(BARS_START + 130, 13, "actual, in balance", Anchor.START, Lettering.SMALL);
        words(EXPECTED, 13, "expected, g", Anchor.END, Lettering.SMALL);
        words(ACTUAL, 13, "actual, g", Anchor.END, Lettering.SMALL);
        words(DIFFERENCE, 13, "difference, g", Anchor.END, Lettering.SMALL);
        shapes.add(Shape.line(new Point(0, TOP - 7.5), new Point(WIDTH, TOP - 7.5), Ink.BLACK));
    }

    private void row(Grams row, double y) {
        words(4, y + 15, row.words(), Anchor.START, Lettering.PLAIN);
        if (row.isStated()) {
            bar(row.expected(), y, Ink.SAND, Ink.GREY);
        }
        bar(row.actual(), y + 11, Ink.BLUE, Ink.BLUE);
        figures(row.expectedWords(), row.actualWords(), row.differenceWords(), y + 15, Lettering.PLAIN);
    }

    private void bar(long grams, double y, Ink fill, Ink edge) {
        double length = Math.abs(grams) * pixelsPerGram;
        shapes.add(new Shape.Box(new Point(grams < 0 ? zero - length : zero, y), length, 10, fill, edge));
    }

    private void figures(String expected, String actual, String difference, double y, Lettering lettering) {
        words(EXPECTED, y, expected, Anchor.END, lettering);
        words(ACTUAL, y, actual, Anchor.END, lettering);
        words(DIFFERENCE, y, difference, Anchor.END, lettering);
    }

    private void total(List<Grams> rows, double y) {
        Grams total = Grams.total(rows);
        shapes.add(Shape.line(new Point(0, y + 2.5), new Point(WIDTH, y + 2.5), Ink.BLACK));
        words(4, y + 16, total.words(), Anchor.START, Lettering.STRONG);
        figures(total.expectedWords(), total.actualWords(), total.differenceWords(), y + 16, Lettering.STRONG);
    }
}
