package dev.gambrel.conformance.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Share;
import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

class EveryPublishedTableTest {
    private static final String REFUSED = "23-fallow-joints.cuts";

    static List<String> tables() throws IOException, URISyntaxException {
        Path folder =
                Path.of(EveryPublishedTableTest.class.getResource("/published").toURI());
        try (Stream<Path> files = Files.list(folder)) {
            return files.map(file -> file.getFileName().toString())
                    .filter(name -> !name.equals(REFUSED))
                    .sorted()
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("tables")
    void compiles_without_a_finding(String file) {
        assertEquals(
                List.of(), PublishedTable.check(file, PublishedTable.text(file)).diagnostics());
    }

    @ParameterizedTest
    @MethodSource("tables")
    void every_figure_names_a_source_that_can_be_found_again(String file) {
        CutTree tree = PublishedTable.of(file).tree();
        parts(tree.parts()).forEach(part -> {
            if (part.share() instanceof Share.Stated stated) {
                assertEquals(1, stated.sources().size(), part.name().text());
                assertFalse(tree.source(stated.sources().get(0))
                        .orElseThrow()
                        .citation()
                        .isBlank());
            }
        });
    }

    private static Stream<Part> parts(List<Part> parts) {
        return parts.stream()
                .flatMap(part ->
                        part instanceof Cut cut ? Stream.concat(Stream.of(part), parts(cut.parts())) : Stream.of(part));
    }
}
