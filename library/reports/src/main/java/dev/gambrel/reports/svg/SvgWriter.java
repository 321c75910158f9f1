package dev.gambrel.reports.svg;

import dev.gambrel.diagnostic.Visible;
import dev.gambrel.reports.markup.Markup;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Collectors;

/** Pictures as elements. Colours and fonts stand at each shape, so that a picture looks the same wherever it is put. */
final class SvgWriter {
    private static final int DECIMALS = 1;

    private final Markup out;

    SvgWriter(Markup out) {
        this.out = out;
    }

    void write(Picture picture) {
        out.open(
                "svg",
                "xmlns",
                "http://www.w3.org/2000/svg",
                "viewBox",
                "0 " + number(picture.top()) + " " + number(picture.width()) + " " + number(picture.height()),
                "width",
                number(picture.width()),
                "height",
                number(picture.height()),
                "role",
                "img",
                "aria-label",
                picture.title(),
                "font-family",
                "sans-serif");
        out.element("title", picture.title());
        out.element("desc", picture.description());
        picture.shapes().forEach(this::write);
        out.close();
    }

    private void write(Shape shape) {
        if (shape instanceof Shape.Stroke stroke) {
            stroke(stroke);
        } else if (shape instanceof Shape.Box box) {
            out.empty(
                    "rect",
                    painted(
                            box.fill(),
                            box.edge(),
                            "x",
                            number(box.corner().x()),
                            "y",
                            number(box.corner().y()),
                            "width",
                            number(box.width()),
                            "height",
                            number(box.height())));
        } else if (shape instanceof Shape.Polygon polygon) {
            out.empty("polygon", painted(polygon.fill(), polygon.edge(), "points", points(polygon.corners())));
        } else if (shape instanceof Shape.Dot dot) {
            out.empty(
                    "circle",
                    painted(
                            dot.fill(),
                            dot.edge(),
                            "cx",
                            number(dot.centre().x()),
                            "cy",
                            number(dot.centre().y()),
                            "r",
                            number(dot.radius())));
        } else if (shape instanceof Shape.Words words) {
            words(words);
        }
    }

    private void stroke(Shape.Stroke stroke) {
        List<String> attributes = new ArrayList<>(List.of(
                "points",
                points(stroke.points()),
                "fill",
                Ink.NONE.code(),
                "stroke",
                stroke.ink().code(),
                "stroke-width",
                number(stroke.width())));
        if (stroke.isDashed()) {
            attributes.addAll(List.of("stroke-dasharray", "5 3"));
        }
        out.empty("polyline", attributes.toArray(String[]::new));
    }

    private static String[] painted(Ink fill, Ink edge, String... where) {
        List<String> attributes = new ArrayList<>(List.of(where));
        attributes.addAll(List.of("fill", fill.code(), "stroke", edge.code()));
        return attributes.toArray(String[]::new);
    }

    /** Where fonts may be wider than was reckoned with, the words are fitted to their room. */
    private void words(Shape.Words words) {
        Lettering lettering = words.lettering();
        String text = Visible.text(words.text());
        List<String> attributes = new ArrayList<>(List.of(
                "x",
                number(words.at().x()),
                "y",
                number(words.at().y()),
                "text-anchor",
                words.anchor().name().toLowerCase(Locale.ROOT),
                "font-size",
                number(lettering.size()),
                "fill",
                lettering.ink().code()));
        if (lettering.isBold()) {
            attributes.addAll(List.of("font-weight", "bold"));
        }
        if (!text.codePoints().allMatch(Lettering::isKnown)) {
            attributes.addAll(List.of("textLength", number(lettering.width(text)), "lengthAdjust", "spacingAndGlyphs"));
        }
        out.element("text", text, attributes.toArray(String[]::new));
    }

    private static String points(List<Point> points) {
        return points.stream()
                .map(point -> number(point.x()) + "," + number(point.y()))
                .collect(Collectors.joining(" "));
    }

    private static String number(double length) {
        BigDecimal rounded = new BigDecimal(length).setScale(DECIMALS, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? "0" : rounded.stripTrailingZeros().toPlainString();
    }
}
