package dev.gambrel.reports.picture;

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
        String range = "where 19 carcasses of 20 lie";
        String chance = "further off than chance makes any of " + tests + " parts on 19 sheets of 20 (z beyond ±"
                + Written.decimals(critical, 2) + ")";
        double line = LINE;
        shapes.add(new Shape.Box(new Point(4, top + 4), 30, 10, Ink.SAND, Ink.GREY));
        shapes.add(Shape.line(new Point(19, top + 2), new Point(19, top + 16), Ink.BLACK));
        words(40, line, "expected, and " + range, Anchor.START, Lettering.SMALL);
        shapes.add(Marks.weighed(260, top + 9));
        words(270, line, "weighed", Anchor.START, Lettering.SMALL);
        shapes.add(Marks.workedOut(336, top + 9));
        words(346, line, "worked out from other weights", Anchor.START, Lettering.SMALL);
        shapes.add(Marks.beyondRight(523, top + 9));
        shapes.add(Marks.beyondLeft(534, top + 9));
        words(544, line, "off the scale", Anchor.START, Lettering.SMALL);
        shapes.add(Marks.up(14, top + 24));
        shapes.add(Marks.down(25, top + 24));
        words(40, line + 15, "more, less: " + chance, Anchor.START, Lettering.SMALL);
        return strip(
                "What the signs mean",
                "Box: expected, and " + range + ". Filled circle: weighed. Open circle: worked out. Triangle: " + chance
                        + ".",
                36);
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
        Lettering lettering = row instanceof TreeRow.Known && row.level() <= 1
                ? Lettering.STRONG
                : row instanceof TreeRow.Known ? Lettering.PLAIN : Lettering.SMALL;
        List<String> name = Wrapped.lines(row.name(), lettering, NAMES_END - indent);
        double height = name.size() * LINE + GAP;
        branches(index, height);
        for (int i = 0; i < name.size(); i++) {
            words(indent, BASE + 2 + i * LINE, name.get(i), Anchor.START, lettering);
        }
        String told = row.name() + ": not known";
        if (row instanceof TreeRow.Known known) {
            told = compared(known.part(), height, known.isWeighed() ? "weighed" : "worked out", row.name());
        } else if (row instanceof TreeRow.Together together) {
            told = compared(together.sum(), height, "together", row.name());
        } else {
            words(
                    SCALE_START,
                    BASE + 2,
                    "not known: neither weighed nor to be worked out",
                    Anchor.START,
                    Lettering.SMALL);
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

    private String compared(PartComparison part, double height, String how, String name) {
        double actual = part.weighed().mean();
        double expected = part.expected().mean();
        boolean isWeighed = how.equals("weighed");
        figure(ACTUAL, Written.kilograms(actual), Lettering.PLAIN);
        for (int share = 0; share <= MOST_SHARE; share++) {
            shapes.add(Shape.line(new Point(x(share), top), new Point(x(share), top + height), Ink.PALE));
        }
        if (!part.isStated()) {
            return name + ": " + how + " " + Written.kilograms(actual) + " kg; nothing is expected of it";
        }
        range(part);
        if (expected > 0) {
            mark(actual / expected, isWeighed);
        }
        figure(EXPECTED, Written.kilograms(expected), Lettering.PLAIN);
        figure(DIFFERENCE, Written.more(part.difference()), Lettering.PLAIN);
        String told = name + ": expected " + Written.kilograms(expected) + " kg; " + how + " "
                + Written.kilograms(actual) + " kg; difference " + Written.more(part.difference()) + " kg";
        if (!isWeighed || part.z().isEmpty()) {
            return told;
        }
        double z = part.z().getAsDouble();
        figure(DEVIATIONS, Written.deviations(z), Lettering.PLAIN);
        if (Math.abs(z) > critical) {
            shapes.add(z > 0 ? Marks.up(SIGN, top + 9) : Marks.down(SIGN, top + 9));
            words(SIGN_WORD, BASE + 2, z > 0 ? "more" : "less", Anchor.START, Lettering.SIGNAL);
            return told + ", z " + Written.deviations(z) + ": " + (z > 0 ? "more" : "less") + " than chance explains";
        }
        return told + ", z " + Written.deviations(z);
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
