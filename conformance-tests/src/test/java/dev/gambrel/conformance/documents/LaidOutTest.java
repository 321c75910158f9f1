package dev.gambrel.conformance.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.compiler.format.SpecFormatter;
import dev.gambrel.compiler.source.Catalogue;
import dev.gambrel.text.SourceText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** What is shown to others is laid out as the program lays it out: {@code gambrel format --write} does it. */
class LaidOutTest {
    private static final Path EXAMPLES = Path.of("..", "examples");

    static List<SourceText> examples() throws IOException {
        try (Stream<Path> files = Files.walk(EXAMPLES)) {
            return files.filter(file -> file.toString().endsWith(".cuts")
                            && !file.toString().contains("target"))
                    .sorted()
                    .map(file -> new SourceText(
                            file.getFileName().toString(), Documents.text("examples/" + EXAMPLES.relativize(file))))
                    .toList();
        }
    }

    static Stream<SourceText> catalogue() {
        return Catalogue.species().stream()
                .map(species -> Catalogue.text(species).orElseThrow());
    }

    /** The specification on the first page, and the example of what a layout looks like. */
    static Stream<SourceText> pages() {
        return Stream.of(block("README.md", "Marram leg and loin"), block("spec-lang/LANGUAGE.md", "four spaces"));
    }

    private static SourceText block(String page, String words) {
        return Documents.blocks(page).stream()
                .filter(block -> block.kind().startsWith("cuts") && block.text().contains(words))
                .map(block -> new SourceText(page, block.text()))
                .findFirst()
                .orElseThrow();
    }

    @ParameterizedTest
    @MethodSource({"examples", "catalogue", "pages"})
    void it_is_laid_out(SourceText text) {
        assertEquals(new SpecFormatter().format(text).orElseThrow(), text.text());
    }
}
