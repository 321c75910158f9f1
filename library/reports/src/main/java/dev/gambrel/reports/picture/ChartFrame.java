package dev.gambrel.reports.picture;

import dev.gambrel.reports.svg.Ink;
import dev.gambrel.reports.svg.Lettering;
import dev.gambrel.reports.svg.Picture;
import dev.gambrel.reports.svg.Point;
import dev.gambrel.reports.svg.Shape;
import dev.gambrel.reports.svg.Shape.Anchor;
import dev.gambrel.reports.svg.Wrapped;
import dev.gambrel.yields.cuttingtest.wording.Written;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.DoubleStream;

/** What charts of tests in order have in common: a scale at the left, tests numbered below, their labels and the signals under it. */
final class ChartFrame {
    private static final double WIDTH = 680;
    private static final double LEFT = 64;
    private static final double RIGHT = 566;
    private static final double TOP = 28;
    private static final double BOTTOM = 236;
    private static final double MARGIN = 0.08;
    private static final double ROOM_OF_A_NUMBER = 26;
    private static final double LABEL = 226;
    private static final double LINE = 14;

    private final int tests;
    private final double least;
    private final double most;
    private final int decimals;
    private final List<Shape> shapes = new ArrayList<>();
    private final List<Shape.Words> ends = new ArrayList<>();
    private double lastNumber;

    ChartFrame(int tests, DoubleStream figures, ChartUnit unit) {
        double[] all = figures.sorted().toArray();
        double reach = Math.max(all[all.length - 1] - all[0], Double.MIN_NORMAL);
        this.tests = tests;
        this.least = all[0] - MARGIN * reach;
        this.most = all[all.length - 1] + MARGIN * reach;
        this.decimals = unit.decimals();
        words(4, 14, unit.words(), Anchor.START, Lettering.SMALL);
        shapes.add(new Shape.Box(new Point(LEFT, TOP), RIGHT - LEFT, BOTTOM - TOP, Ink.NONE, Ink.PALE));
    }

    private double x(int test) {
        return LEFT + (RIGHT - LEFT) * (test + 0.5) / tests;
    }

    private double y(double figure) {
        return BOTTOM - (BOTTOM - TOP) * (figure - least) / (most - least);
    }

    private void words(double x, double y, String text, Anchor anchor, Lettering lettering) {
        shapes.add(new Shape.Words(new Point(x, y), text, anchor, lettering));
    }

    /** A line that every test has a figure on, named at its right end, with the last figure there. */
    void line(List<Double> figures, String name, boolean isDashed) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < tests; i++) {
            points.add(new Point(LEFT + (RIGHT - LEFT) * i / tests, y(figures.get(i))));
            points.add(new Point(LEFT + (RIGHT - LEFT) * (i + 1) / tests, y(figures.get(i))));
        }
        shapes.add(new Shape.Stroke(points, Ink.GREY, 1, isDashed));
        double last = figures.get(tests - 1);
        ends.add(new Shape.Words(
                new Point(RIGHT + 5, y(last) + 4),
                name + " " + Written.decimals(last, decimals),
                Anchor.START,
                Lettering.SMALL));
    }

    /** Names that would lie on one another move down. */
    private void ends() {
        double lowest = 0;
        ends.sort(Comparator.comparingDouble(end -> end.at().y()));
        for (Shape.Words end : ends) {
            lowest = Math.max(lowest + LINE, end.at().y());
            words(end.at().x(), lowest, end.text(), end.anchor(), end.lettering());
        }
    }

    void scale() {
        words(LEFT - 5, y(least) + 4, Written.decimals(least, decimals), Anchor.END, Lettering.SMALL);
        words(LEFT - 5, y(most) + 4, Written.decimals(most, decimals), Anchor.END, Lettering.SMALL);
    }

    void tests(List<Double> figures) {
        List<Point> points = new ArrayList<>();
        for (int i = 0; i < tests; i++) {
            points.add(new Point(x(i), y(figures.get(i))));
        }
        shapes.add(new Shape.Stroke(points, Ink.BLUE, 1, false));
        points.forEach(point -> shapes.add(Marks.weighed(point.x(), point.y())));
        int each = (int) Math.ceil(ROOM_OF_A_NUMBER * tests / (RIGHT - LEFT));
        for (int i = 0; i < tests; i += Math.max(1, each)) {
            words(x(i), BOTTOM + 14, Integer.toString(i + 1), Anchor.MIDDLE, Lettering.SMALL);
        }
    }

    /** Marked by a shape, and by the number of the test where there is room for it. */
    void signal(int test, double figure, boolean isAbove) {
        double x = x(test);
        double y = y(figure);
        shapes.add(new Shape.Dot(new Point(x, y), 8, Ink.WHITE, Ink.RUST));
        shapes.add(isAbove ? Marks.up(x, y) : Marks.down(x, y));
        if (x - lastNumber > ROOM_OF_A_NUMBER && x + ROOM_OF_A_NUMBER < RIGHT) {
            words(x + 11, y + 4, Integer.toString(test + 1), Anchor.START, Lettering.SIGNAL);
            lastNumber = x;
        }
    }

    Picture picture(String title, List<String> labels, List<String> signals) {
        ends();
        double y = BOTTOM + 34;
        for (String signal : signals) {
            for (String line : Wrapped.lines(signal, Lettering.PLAIN, WIDTH - 8)) {
                words(4, y, line, Anchor.START, Lettering.PLAIN);
                y += LINE;
            }
        }
        y += signals.isEmpty() ? 0 : LINE / 2;
        y = labels(labels, y);
        String told = signals.isEmpty() ? "No test is beyond the limits." : String.join(" ", signals);
        return new Picture(title, told, 0, WIDTH, y, shapes);
    }

    /** In three columns, to be read across. */
    private double labels(List<String> labels, double top) {
        double y = top;
        for (int row = 0; row < labels.size(); row += 3) {
            int lines = 1;
            for (int i = row; i < Math.min(labels.size(), row + 3); i++) {
                List<String> wrapped = Wrapped.lines((i + 1) + ": " + labels.get(i), Lettering.SMALL, LABEL - 10);
                for (int line = 0; line < wrapped.size(); line++) {
                    words(4 + (i - row) * LABEL, y + line * LINE, wrapped.get(line), Anchor.START, Lettering.SMALL);
                }
                lines = Math.max(lines, wrapped.size());
            }
            y += lines * LINE;
        }
        return y;
    }
}
