package dev.gambrel.reports.svg;

import dev.gambrel.reports.markup.Markup;
import java.util.ArrayList;
import java.util.List;

/**
 * Shapes on a sheet. What is beyond its edges is not seen.
 *
 * @param title what it shows, for those who do not see it
 * @param description what is to be seen on it
 * @param top where it begins downwards, so that the strips of one picture stay where they are
 * @param width of the sheet
 * @param height of the sheet
 * @param shapes from the hindmost to the foremost
 */
public record Picture(String title, String description, double top, double width, double height, List<Shape> shapes) {
    /** Copies the list. */
    public Picture {
        shapes = List.copyOf(shapes);
    }

    /**
     * Strips that lie below one another, as one picture.
     *
     * @param title what it shows
     * @param description what is to be seen on it
     * @param strips from the top down, one or more, equally wide
     * @return the picture
     */
    public static Picture of(String title, String description, List<Picture> strips) {
        List<Shape> shapes = new ArrayList<>();
        strips.forEach(strip -> shapes.addAll(strip.shapes()));
        double height = strips.stream().mapToDouble(Picture::height).sum();
        Picture first = strips.get(0);
        return new Picture(title, description, first.top(), first.width(), height, shapes);
    }

    /**
     * The picture as a file of its own.
     *
     * @return SVG, to be kept as UTF-8
     */
    public String svg() {
        return Markup.of(this::write).stripLeading();
    }

    /**
     * Puts the picture on a page.
     *
     * @param page where it stands next
     */
    public void write(Markup page) {
        new SvgWriter(page).write(this);
    }
}
