package dev.gambrel.conformance.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.conformance.documents.Documents.Block;
import java.util.List;
import java.util.regex.MatchResult;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** The table of what can be said has every row, and shows nothing that does not stand in an example that compiles. */
class WhatCanBeSaidTest {
    private static final String PAGE = "spec-lang/LANGUAGE.md";
    private static final String HEADING = "\n## What can be said\n";
    private static final Pattern ROW = Pattern.compile("^\\| (\\d+) \\| (.+) \\| (.+) \\|$", Pattern.MULTILINE);
    private static final Pattern CODE = Pattern.compile("`([^`]+)`");
    private static final int ROWS = 42;

    /** Every example of the page, its gaps made even. */
    private static final String EXAMPLES = Documents.blocks(PAGE).stream()
            .filter(block -> block.kind().startsWith("cuts"))
            .map(Block::text)
            .map(WhatCanBeSaidTest::even)
            .collect(Collectors.joining("\n"));

    static List<MatchResult> rows() {
        String page = Documents.text(PAGE);
        String section = page.substring(page.indexOf(HEADING) + HEADING.length());
        return ROW.matcher(section.substring(0, section.indexOf("\n## ")))
                .results()
                .toList();
    }

    static Stream<String> forms() {
        return rows().stream()
                .flatMap(row -> CODE.matcher(row.group(3)).results())
                .map(code -> code.group(1));
    }

    @Test
    void every_thing_to_say_has_its_row() {
        assertEquals(
                IntStream.rangeClosed(1, ROWS).mapToObj(Integer::toString).toList(),
                rows().stream().map(row -> row.group(1)).toList());
    }

    @Test
    void every_row_shows_how_it_is_written_or_says_that_a_note_carries_it() {
        for (MatchResult row : rows()) {
            boolean shown = CODE.matcher(row.group(3)).find();
            assertTrue(shown || row.group(3).contains("a note"), row.group(2));
        }
    }

    @ParameterizedTest
    @MethodSource("forms")
    void what_a_row_shows_stands_in_an_example(String form) {
        assertFalse(form.isBlank());
        assertTrue(EXAMPLES.contains(form), form);
    }

    private static String even(String text) {
        return text.replaceAll("\\s+", " ");
    }
}
