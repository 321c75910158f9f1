package dev.gambrel.reports.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.reports.svg.Shape.Anchor;
import java.util.List;
import org.junit.jupiter.api.Test;

class PictureTest {
    private static Picture written(String words) {
        return new Picture(
                "Leg",
                "A leg of hogget.",
                0,
                100,
                20,
                List.of(
                        new Shape.Box(new Point(1, 2.25), 30, 10, Ink.SAND, Ink.GREY),
                        new Shape.Words(new Point(50, 12), words, Anchor.MIDDLE, Lettering.SIGNAL)));
    }

    @Test
    void a_picture_is_a_file_of_its_own_with_a_title_and_a_description() {
        assertEquals("""
                <svg xmlns="http://www.w3.org/2000/svg" viewBox="0 0 100 20" width="100" height="20" role="img" aria-label="Leg" font-family="sans-serif"><title>Leg</title><desc>A leg of hogget.</desc><rect x="1" y="2.2" width="30" height="10" fill="#e9e2d0" stroke="#555555"/><text x="50" y="12" text-anchor="middle" font-size="11" fill="#8f2d0e" font-weight="bold">leg</text></svg>
                """, written("leg").svg());
    }

    @Test
    void words_neither_open_an_element_nor_turn_their_line_round() {
        String svg = written("</text><script>\u202egel").svg();
        assertFalse(svg.contains("<script"), svg);
        assertTrue(svg.contains("&lt;/text&gt;&lt;script&gt;\\u{202E}gel"), svg);
    }

    /** Fonts of other scripts may be wider than letters of Europe. */
    @Test
    void words_of_unknown_width_are_fitted_to_their_room() {
        assertTrue(written("羊腿").svg().contains("textLength=\"27.3\" lengthAdjust=\"spacingAndGlyphs\""));
        assertFalse(written("épaule").svg().contains("textLength"));
    }

    @Test
    void strips_make_one_picture_as_high_as_all_of_them() {
        Picture second = new Picture("Shoulder", "", 20, 100, 15, List.of());
        Picture whole = Picture.of("Both", "", List.of(written("leg"), second));
        assertEquals(35, whole.height());
        assertEquals(2, whole.shapes().size());
    }
}
