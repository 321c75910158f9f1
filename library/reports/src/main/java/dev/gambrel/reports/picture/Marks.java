package dev.gambrel.reports.picture;

import dev.gambrel.reports.svg.Ink;
import dev.gambrel.reports.svg.Point;
import dev.gambrel.reports.svg.Shape;
import java.util.List;

/** Signs that differ in shape, not in colour alone. */
final class Marks {
    private static final double HALF = 4;

    private Marks() {}

    static Shape weighed(double x, double y) {
        return new Shape.Dot(new Point(x, y), HALF, Ink.BLUE, Ink.BLUE);
    }

    static Shape workedOut(double x, double y) {
        return new Shape.Dot(new Point(x, y), HALF - 0.5, Ink.WHITE, Ink.BLUE);
    }

    static Shape up(double x, double y) {
        return pointed(Ink.RUST, new Point(x, y - HALF), new Point(x + HALF, y + HALF), new Point(x - HALF, y + HALF));
    }

    static Shape down(double x, double y) {
        return pointed(Ink.RUST, new Point(x, y + HALF), new Point(x + HALF, y - HALF), new Point(x - HALF, y - HALF));
    }

    /** Further to the right than there is room. */
    static Shape beyondRight(double x, double y) {
        return pointed(Ink.BLUE, new Point(x + HALF, y), new Point(x - HALF, y - HALF), new Point(x - HALF, y + HALF));
    }

    /** Further to the left than there is room. */
    static Shape beyondLeft(double x, double y) {
        return pointed(Ink.BLUE, new Point(x - HALF, y), new Point(x + HALF, y - HALF), new Point(x + HALF, y + HALF));
    }

    private static Shape pointed(Ink ink, Point... corners) {
        return new Shape.Polygon(List.of(corners), ink, ink);
    }
}
