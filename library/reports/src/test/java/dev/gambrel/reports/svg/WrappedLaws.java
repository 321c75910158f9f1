package dev.gambrel.reports.svg;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.diagnostic.Visible;
import java.util.List;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.StringLength;

/** A name takes as many lines as it needs, and loses no letter. */
class WrappedLaws {
    @Property(tries = 300)
    void no_line_is_wider_than_its_room_and_every_letter_is_there(
            @ForAll @StringLength(max = 300) String text, @ForAll @DoubleRange(min = 20, max = 300) double width) {
        List<String> lines = Wrapped.lines(text, Lettering.STRONG, width);
        assertTrue(lines.stream().allMatch(line -> Lettering.STRONG.width(line) <= width), lines.toString());
        assertEquals(Visible.text(text).replace(" ", ""), String.join("", lines).replace(" ", ""));
    }

    @Example
    void words_stay_whole_where_they_fit() {
        assertEquals(List.of("aitch bone", "and sacrum"), Wrapped.lines("aitch bone and sacrum", Lettering.PLAIN, 80));
    }

    @Example
    void a_word_without_end_is_broken() {
        assertTrue(Wrapped.lines("n".repeat(10_000), Lettering.PLAIN, 100).size() > 100);
    }
}
