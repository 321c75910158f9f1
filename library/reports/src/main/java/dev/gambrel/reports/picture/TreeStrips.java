package dev.gambrel.reports.picture;

import dev.gambrel.reports.picture.TreeRow.How;
import dev.gambrel.reports.svg.Ink;
import dev.gambrel.reports.svg.Lettering;
import dev.gambrel.reports.svg.Picture;
import dev.gambrel.reports.svg.Point;
import dev.gambrel.reports.svg.Shape;
import dev.gambrel.reports.svg.Shape.Anchor;
import dev.gambrel.reports.svg.Wrapped;
import dev.gambrel.yields.cuttingtest.PartComparison;
import dev.gambrel.yields.cuttingtest.wording.Written;
import dev.gambrel.yields.figure.Spread;
import java.util.ArrayList;
import java.util.List;

/** Draws the tree strip by strip, each where the last ended. */
final class TreeStrips {
    private static final double WIDTH = 680;
    private static final double LINE = 13;
    private static final double GAP = 4;
    private static final double BASE = 11;
    private static final double MOST_STEP = 13;
    private static final double MOST_INDENT = 110;
    private static final double NAMES_END = 244;
    private static final double SCALE_START = 254;
    private static final double SCALE_END = 408;
    private static final double EXPECTED = 462;
    private static final double ACTUAL = 516;
    private static final double DIFFERENCE = 572;
    private static final double DEVIATIONS = 618;
    private static final double SIGN = 632;
    private static final double SIGN_WORD = 641;
    private static final double MOST_SHARE = 2;
    private static final double RANGE = 2;

    private final List<TreeRow> lines;
    private final double critical;
    private final double step;
    private double top;
    private List<Shape> shapes = new ArrayList<>();

    TreeStrips(List<TreeRow> lines, double critical) {
        this.lines = lines;
        this.critical = critical;
        int deepest = lines.stream().mapToInt(TreeRow::level).max().orElse(0);
        this.step = Math.min(MOST_STEP, MOST_INDENT / Math.max(1, deepest));
    }

    private Picture strip(String title, String description, double height) {
        Picture strip = new Picture(title, description, top, WIDTH, height, shapes);
        top += height;
        shapes = new ArrayList<>();
        return strip;
    }

    private static double x(double shareOfExpected) {
        double kept = Math.max(0, Math.min(MOST_SHARE, shareOfExpected));
        return SCALE_START + (SCALE_END - SCALE_START) * kept / MOST_SHARE;
    }

    private void words(double x, double line, String text, Anchor anchor, Lettering lettering) {
        shapes.add(new Shape.Words(new Point(x, top + line), text, anchor, lettering));
    }

    private void figure(double x, String text, Lettering lettering) {
        words(x, BASE + 2, text, Anchor.END, lettering);
    }

    Picture key(int tests) {
        String range = "expected, and where 19 carcasses of 20 lie";
        String chance = "more or less than chance explains: on 19 sheets of 20 none of " + tests
                + " parts is so far off (z beyond ±" + Written.decimals(critical, 2) + ")";
        shapes.add(new Shape.Box(new Point(4, top + 4), 22, 10, Ink.SAND, Ink.GREY));
        shapes.add(Shape.line(new Point(15, top + 2), new Point(15, top + 16), Ink.BLACK));
        double x = after(30, range);
        shapes.add(Marks.weighed(x, top + 9));
        x = after(x + 8, "weighed");
        shapes.add(Marks.workedOut(x, top + 9));
        x = after(x + 8, "worked out from other weights");
        shapes.add(Marks.beyondLeft(x, top + 9));
        shapes.add(Marks.beyondRight(x + 10, top + 9));
        after(x + 18, "off the scale");
        shapes.add(Marks.up(9, top + 24));
        shapes.add(Marks.down(20, top + 24));
        words(30, LINE + 15, chance, Anchor.START, Lettering.SMALL);
        return strip(
                "What the signs mean",
                "Box: " + range + ". Filled circle: weighed. Open circle: worked out from other weights. Triangle: "
                        + chance + ".",
                36);
    }

    /** Where the next sign of the key stands. */
    private double after(double x, String text) {
        words(x, LINE, text, Anchor.START, Lettering.SMALL);
        return x + Lettering.SMALL.width(text) + 14;
    }

    Picture heading() {
        double line = 24;
        words(4, line, "part", Anchor.START, Lettering.SMALL);
        words(x(1), 11, "of what was expected", Anchor.MIDDLE, Lettering.SMALL);
        words(x(0), line, "0", Anchor.MIDDLE, Lettering.SMALL);
        words(x(1), line, "100 %", Anchor.MIDDLE, Lettering.SMALL);
        words(x(2), line, "200 %", Anchor.MIDDLE, Lettering.SMALL);
        words(EXPECTED, 11, "expected", Anchor.END, Lettering.SMALL);
        words(EXPECTED, line, "kg", Anchor.END, Lettering.SMALL);
        words(ACTUAL, 11, "actual", Anchor.END, Lettering.SMALL);
        words(ACTUAL, line, "kg", Anchor.END, Lettering.SMALL);
        words(DIFFERENCE, 11, "difference", Anchor.END, Lettering.SMALL);
        words(DIFFERENCE, line, "kg", Anchor.END, Lettering.SMALL);
        words(DEVIATIONS, line, "z", Anchor.END, Lettering.SMALL);
        shapes.add(Shape.line(new Point(0, top + 29.5), new Point(WIDTH, top + 29.5), Ink.BLACK));
        return strip("Columns", "Part; scale of what was expected; expected; actual; difference; z.", 30);
    }

    Picture row(int index) {
        TreeRow row = lines.get(index);
        double indent = 4 + row.level() * step;
        boolean isPart = row instanceof TreeRow.Known known && known.isOne();
        Lettering lettering = !isPart ? Lettering.SMALL : row.level() <= 1 ? Lettering.STRONG : Lettering.PLAIN;
        List<String> name = Wrapped.lines(row.name(), lettering, NAMES_END - indent);
        double height = name.size() * LINE + GAP;
        branches(index, height);
        for (int i = 0; i < name.size(); i++) {
            words(indent, BASE + 2 + i * LINE, name.get(i), Anchor.START, lettering);
        }
        String told;
        if (row instanceof TreeRow.Known known) {
            told = compared(known, height);
        } else {
            told = row.name() + ": " + ((TreeRow.Unknown) row).why();
            words(SCALE_START + 4, BASE + 2, ((TreeRow.Unknown) row).why(), Anchor.START, Lettering.SMALL);
        }
        return strip(row.name(), told, height);
    }

    /** A line down from each cut above that has more to come, and one across to the part. */
    private void branches(int index, double height) {
        int level = lines.get(index).level();
        for (int above = 1; above <= level; above++) {
            boolean goesOn = goesOn(index, above);
            double x = 4 + (above - 0.5) * step - 2;
            double middle = top + LINE - 4;
            if (goesOn || above == level) {
                shapes.add(Shape.line(new Point(x, top), new Point(x, goesOn ? top + height : middle), Ink.PALE));
            }
            if (above == level) {
                shapes.add(Shape.line(new Point(x, middle), new Point(x + step / 2 - 1, middle), Ink.PALE));
            }
        }
    }

    private boolean goesOn(int index, int level) {
        for (int i = index + 1; i < lines.size() && lines.get(i).level() >= level; i++) {
            if (lines.get(i).level() == level) {
                return true;
            }
        }
        return false;
    }

    private String compared(TreeRow.Known row, double height) {
        PartComparison part = row.part();
        String actual = Written.kilograms(part.weighed().mean());
        for (int share = 0; share <= MOST_SHARE; share++) {
            shapes.add(Shape.line(new Point(x(share), top), new Point(x(share), top + height), Ink.PALE));
        }
        if (!part.isStated()) {
            figure(ACTUAL, actual, Lettering.PLAIN);
            return row.name() + ": " + row.how().words() + " " + actual + " kg; nothing is expected of it";
        }
        String expected = Written.kilograms(part.expected().mean());
        range(part);
        figure(EXPECTED, expected, Lettering.PLAIN);
        if (row.how() == How.ASSUMED) {
            words(EXPECTED + 14, BASE + 2, How.ASSUMED.words(), Anchor.START, Lettering.SMALL);
            return row.name() + ": " + How.ASSUMED.words() + ", " + expected + " kg";
        }
        if (part.expected().mean() > 0) {
            mark(part.weighed().mean() / part.expected().mean(), row.how() == How.WEIGHED);
        }
        figure(ACTUAL, actual, Lettering.PLAIN);
        figure(DIFFERENCE, Written.more(part.difference()), Lettering.PLAIN);
        return row.name() + ": expected " + expected + " kg; " + row.how().words() + " " + actual + " kg; difference "
                + Written.more(part.difference()) + " kg"
                + (row.how() == How.WEIGHED && part.z().isPresent()
                        ? judged(part.z().getAsDouble())
                        : "");
    }

    private String judged(double z) {
        figure(DEVIATIONS, Written.deviations(z), Lettering.PLAIN);
        if (Math.abs(z) <= critical) {
            return ", z " + Written.deviations(z);
        }
        String word = z > 0 ? "more" : "less";
        shapes.add(z > 0 ? Marks.up(SIGN, top + 9) : Marks.down(SIGN, top + 9));
        words(SIGN_WORD, BASE + 2, word, Anchor.START, Lettering.SIGNAL);
        return ", z " + Written.deviations(z) + ": " + word + " than chance explains";
    }

    private void range(PartComparison part) {
        double y = top + 4;
        if (part.expected().spread() instanceof Spread.Stated stated
                && part.expected().mean() > 0) {
            double half = RANGE * stated.standardDeviation() / part.expected().mean();
            shapes.add(new Shape.Box(new Point(x(1 - half), y), x(1 + half) - x(1 - half), 10, Ink.SAND, Ink.GREY));
        }
        shapes.add(Shape.line(new Point(x(1), y - 2), new Point(x(1), y + 12), Ink.BLACK));
    }

    private void mark(double share, boolean isWeighed) {
        double y = top + 9;
        if (share > MOST_SHARE) {
            shapes.add(Marks.beyondRight(SCALE_END, y));
        } else if (share < 0) {
            shapes.add(Marks.beyondLeft(SCALE_START, y));
        } else {
            shapes.add(isWeighed ? Marks.weighed(x(share), y) : Marks.workedOut(x(share), y));
        }
    }
}
