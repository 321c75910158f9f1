package dev.gambrel.reports.svg;

import java.util.List;

/** Something drawn. */
public sealed interface Shape {
    /**
     * A line, or several in one go.
     *
     * @param points through which it goes
     * @param ink its colour
     * @param width how thick it is
     * @param isDashed whether it is broken
     */
    record Stroke(List<Point> points, Ink ink, double width, boolean isDashed) implements Shape {
        /** Copies the list. */
        public Stroke {
            points = List.copyOf(points);
        }
    }

    /**
     * A rectangle.
     *
     * @param corner above and to the left
     * @param width to the right
     * @param height downwards
     * @param fill inside
     * @param edge around it
     */
    record Box(Point corner, double width, double height, Ink fill, Ink edge) implements Shape {}

    /**
     * A shape with corners.
     *
     * @param corners one after another
     * @param fill inside
     * @param edge around it
     */
    record Polygon(List<Point> corners, Ink fill, Ink edge) implements Shape {
        /** Copies the list. */
        public Polygon {
            corners = List.copyOf(corners);
        }
    }

    /**
     * A circle.
     *
     * @param centre its middle
     * @param radius how large it is
     * @param fill inside
     * @param edge around it
     */
    record Dot(Point centre, double radius, Ink fill, Ink edge) implements Shape {}

    /**
     * Words on one line.
     *
     * @param at where they stand, on their base line
     * @param text from anywhere; what hides or steers is shown as its number
     * @param anchor which end of them stands there
     * @param lettering how they are set
     */
    record Words(Point at, String text, Anchor anchor, Lettering lettering) implements Shape {}

    /** Which end of words stands at their place. */
    enum Anchor {
        /** They begin there. */
        START,
        /** They stand around it. */
        MIDDLE,
        /** They end there. */
        END
    }

    /**
     * A plain line.
     *
     * @param from one end
     * @param to the other
     * @param ink its colour
     * @return the line, one pixel wide
     */
    static Stroke line(Point from, Point to, Ink ink) {
        return new Stroke(List.of(from, to), ink, 1, false);
    }
}
