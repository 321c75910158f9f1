package dev.gambrel.batches.csv;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.io.IOException;
import java.io.StringReader;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

class RowLinesTest {
    private static List<String> rows(String text, int together, int most) throws IOException {
        RowLines lines = new RowLines(new StringReader(text));
        Chunk chunk = new Chunk(together, 1, most);
        List<String> rows = new ArrayList<>();
        boolean isMore = true;
        while (isMore) {
            chunk.clear();
            isMore = lines.fill(chunk);
            for (int i = 0; i < chunk.rows(); i++) {
                rows.add(chunk.line(i) + " "
                        + new String(chunk.text(), chunk.begin(i), chunk.end(i) - chunk.begin(i))
                        + (chunk.isTooLong(i) ? "…" : ""));
            }
        }
        return rows;
    }

    @Example
    void a_row_has_the_number_of_its_line() throws IOException {
        assertEquals(List.of("1 a", "3 b", "4 c", "5 d"), rows("a\n\nb\r\nc\rd", 2, 10));
        assertEquals(List.of(), rows("\n\r\n\r", 2, 10));
    }

    @Example
    void of_a_row_that_is_too_long_the_beginning_is_kept() throws IOException {
        assertEquals(List.of("1 abcde", "2 abcde…", "3 x"), rows("abcde\nabcdef\nx\n", 2, 5));
        assertEquals(List.of("1 " + "y".repeat(7) + "…"), rows("y".repeat(1_000_000), 4, 7));
    }

    /** A file of long rows would else need room for as many of them as there are short ones. */
    @Example
    void of_long_rows_fewer_are_taken_together_and_as_many_as_belong_together() throws IOException {
        RowLines lines = new RowLines(new StringReader(("x".repeat(4000) + "\n").repeat(1024)));
        Chunk chunk = new Chunk(1024, 64, 4096);
        lines.fill(chunk);
        assertEquals(64, chunk.rows());
        Chunk shorter = new Chunk(1024, 64, 4096);
        new RowLines(new StringReader("x\n".repeat(2000))).fill(shorter);
        assertEquals(1024, shorter.rows());
    }

    @Provide
    Arbitrary<String> texts() {
        return Arbitraries.strings().withChars("ab\n\r").ofMaxLength(60);
    }

    @Property(tries = 1000)
    void no_line_is_lost_however_many_are_taken_together(
            @ForAll("texts") String text, @ForAll @IntRange(min = 1, max = 7) int together) throws IOException {
        String expected = text.lines().filter(line -> !line.isEmpty()).collect(Collectors.joining("|"));
        String found = rows(text, together, 100).stream()
                .map(row -> row.substring(row.indexOf(' ') + 1))
                .collect(Collectors.joining("|"));
        assertEquals(expected, found);
    }
}
