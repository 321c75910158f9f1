package dev.gambrel.conformance.catalogue;

import dev.gambrel.compiler.catalogue.CatalogueCut;
import dev.gambrel.compiler.catalogue.CatalogueSpecies;
import dev.gambrel.text.TradeName;
import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Stream;

/** What was written down from print, row by row, and the catalogue to hold against it. */
final class Printed {
    private Printed() {}

    /** The rows of a file after its heads; an empty column at the end stays. */
    static List<List<String>> rows(String file) {
        try (InputStream in = Printed.class.getResourceAsStream(file)) {
            return new String(in.readAllBytes(), StandardCharsets.UTF_8)
                    .lines()
                    .skip(1)
                    .map(line ->
                            Stream.of(line.split("\\|", -1)).map(String::strip).toList())
                    .toList();
        } catch (IOException broken) {
            throw new UncheckedIOException(broken);
        }
    }

    static CatalogueSpecies species(String name) {
        return CatalogueSpecies.named(TradeName.of(name)).orElseThrow();
    }

    /** Every piece of a species as it is looked up by its own name. */
    static Stream<CatalogueCut> cuts(CatalogueSpecies species) {
        return species.pieces().stream().map(piece -> {
            List<CatalogueCut> found = species.cutsCalled(piece.name());
            if (found.size() != 1 || found.get(0).piece() != piece) {
                throw new AssertionError("the own name of a piece does not lead to it: " + piece.name());
            }
            return found.get(0);
        });
    }

    /** A printed name without what stands in brackets or after a dash, and the nearest word where a wider one leads. */
    static String bare(String printed) {
        String named = printed.split(" \\(| - ")[0];
        return named.substring(named.lastIndexOf(';') + 1).strip();
    }
}
