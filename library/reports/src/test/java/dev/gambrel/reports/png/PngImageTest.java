package dev.gambrel.reports.png;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.reports.svg.Ink;
import dev.gambrel.reports.svg.Lettering;
import dev.gambrel.reports.svg.Picture;
import dev.gambrel.reports.svg.Point;
import dev.gambrel.reports.svg.Shape;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;

class PngImageTest {
    private static final int SAND = 0xffe9e2d0;

    private static Picture picture(double height) {
        return new Picture(
                "Leg",
                "",
                0,
                100,
                height,
                List.of(
                        new Shape.Box(new Point(0, 0), 50, 20, Ink.SAND, Ink.NONE),
                        new Shape.Words(new Point(55, 15), "leg", Shape.Anchor.START, Lettering.PLAIN)));
    }

    private static BufferedImage image(int width) throws IOException {
        byte[] bytes = PngImage.of(picture(20), width, "leg.png").orElseThrow().bytes();
        return ImageIO.read(new ByteArrayInputStream(bytes));
    }

    @Test
    void an_image_is_as_wide_as_asked_and_as_high_as_follows() throws IOException {
        BufferedImage image = image(250);
        assertEquals(250, image.getWidth());
        assertEquals(50, image.getHeight());
    }

    @Test
    void shapes_and_words_stand_on_white() throws IOException {
        BufferedImage image = image(200);
        assertEquals(SAND, image.getRGB(20, 20));
        assertEquals(0xffffffff, image.getRGB(199, 0));
        assertTrue(
                IntStream.range(110, 150).anyMatch(x -> (image.getRGB(x, 24) & 0xff) < 0x80), "the word is to be seen");
    }

    @Test
    void the_same_picture_gives_the_same_bytes() {
        assertArrayEquals(
                PngImage.of(picture(20), 200, "a.png").orElseThrow().bytes(),
                PngImage.of(picture(20), 200, "b.png").orElseThrow().bytes());
    }

    /** By hand: 1,000 dots to 100 wide make 50,000 high of 5,000. */
    @Test
    void an_image_too_large_is_refused_before_it_is_drawn() {
        List<Diagnostic> found = PngImage.of(picture(5_000), 1_000, "leg.png").diagnostics();
        assertEquals(
                List.of("The image would have 1000 by 50000 dots, 50 million together; at most 40 million are drawn."),
                found.stream().map(Diagnostic::message).toList());
    }
}
