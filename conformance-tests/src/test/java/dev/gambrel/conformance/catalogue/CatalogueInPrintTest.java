package dev.gambrel.conformance.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.catalogue.CatalogueCut;
import dev.gambrel.compiler.catalogue.CatalogueSpecies;
import dev.gambrel.compiler.catalogue.Cited;
import dev.gambrel.compiler.source.Catalogue;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Source;
import dev.gambrel.tree.anatomy.Piece;
import dev.gambrel.tree.anatomy.Reference;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/**
 * The catalogue holds what print holds, and no figure or number besides: {@code shares.csv} and {@code numbers.csv} were
 * written down from the sources that they name, which the species of the catalogue cite in full.
 */
class CatalogueInPrintTest {
    private static final String SHARES = "/catalogue/shares.csv";
    private static final String NUMBERS = "/catalogue/numbers.csv";

    @Test
    void the_catalogue_has_exactly_the_printed_shares() {
        List<String> held = everyCut()
                .flatMap(cut -> cut.cut().shares().stream()
                        .map(share -> String.join(
                                " | ",
                                cut.species(),
                                cut.name(),
                                share.value().expected().toString(),
                                share.value().of().text(),
                                sources(share))))
                .toList();
        assertEquals(columns(SHARES, 5), held);
    }

    @Test
    void the_catalogue_has_exactly_the_printed_numbers() {
        List<String> held = everyCut()
                .flatMap(cut -> cut.cut().numbers().stream()
                        .map(number -> String.join(
                                " | ",
                                cut.species(),
                                cut.name(),
                                scheme(number.value()),
                                number.value().edition(),
                                sources(number))))
                .toList();
        List<String> printed = Printed.rows(NUMBERS).stream()
                .map(row -> String.join(
                        " | ", row.get(0), row.get(1), row.get(2) + " " + row.get(3), row.get(4), row.get(6)))
                .toList();
        assertEquals(printed, held);
    }

    private static String scheme(Reference number) {
        return number.scheme() + " " + number.number();
    }

    @ParameterizedTest
    @CsvFileSource(resources = SHARES, delimiter = '|', numLinesToSkip = 1)
    void a_printed_share_is_its_printed_weight_over_that_of_the_whole(
            String species, String piece, String share, String of, String source, BigDecimal weight, BigDecimal whole) {
        if (weight != null) {
            BigDecimal percent = weight.scaleByPowerOfTen(2).divide(whole, 0, RoundingMode.HALF_UP);
            assertEquals(share, percent + " %", source + ": " + piece);
        }
    }

    @ParameterizedTest
    @CsvFileSource(resources = NUMBERS, delimiter = '|', numLinesToSkip = 1)
    void a_name_printed_beside_a_number_leads_to_the_piece_that_has_the_number(
            String species, String piece, String scheme, String number, String edition, String printed) {
        boolean bareName = !scheme.equals("IMPS") && TradeName.isAcceptable(Printed.bare(printed));
        if (bareName) {
            List<String> meant = Printed.species(species).cutsCalled(TradeName.of(Printed.bare(printed))).stream()
                    .map(cut -> cut.piece().name().text())
                    .toList();
            assertTrue(meant.isEmpty() || meant.contains(piece), printed + " leads to " + meant + ", not " + piece);
        }
    }

    @Test
    void every_source_is_cited_and_every_figure_cites_one() {
        for (TradeName name : Catalogue.species()) {
            CatalogueSpecies species = CatalogueSpecies.named(name).orElseThrow();
            List<Source> cited = new ArrayList<>(species.anatomySources());
            Printed.cuts(species)
                    .forEach(cut -> Stream.<Cited<?>>concat(cut.shares().stream(), cut.numbers().stream())
                            .forEach(figure -> {
                                assertEquals(1, figure.sources().size(), () -> name + ", " + figure);
                                cited.addAll(figure.sources());
                            }));
            assertEquals(
                    List.of(),
                    species.sources().stream().filter(s -> !cited.contains(s)).toList());
        }
    }

    @Test
    void anatomy_is_from_memory_and_no_share_or_number_is() {
        for (TradeName name : Catalogue.species()) {
            CatalogueSpecies species = CatalogueSpecies.named(name).orElseThrow();
            assertEquals(
                    List.of(Source.Kind.MEMORY),
                    species.anatomySources().stream().map(Source::kind).toList());
            Printed.cuts(species)
                    .flatMap(cut -> Stream.<Cited<?>>concat(cut.shares().stream(), cut.numbers().stream()))
                    .flatMap(figure -> figure.sources().stream())
                    .forEach(source -> assertTrue(source.kind() != Source.Kind.MEMORY, source.toString()));
        }
    }

    @Test
    void the_parts_of_a_piece_weigh_no_more_than_the_piece_where_one_source_prints_both() {
        for (TradeName name : Catalogue.species()) {
            CatalogueSpecies species = CatalogueSpecies.named(name).orElseThrow();
            for (Piece piece : species.pieces()) {
                for (Piece.Published whole : piece.published()) {
                    double parts = piece.parts().stream()
                            .flatMap(part -> part.published().stream())
                            .filter(part -> part.sources().equals(whole.sources()))
                            .mapToDouble(part -> part.expected().mean())
                            .sum();
                    assertTrue(parts <= whole.expected().mean(), () -> name + ": " + piece.name());
                }
            }
        }
    }

    private record Held(String species, CatalogueCut cut) {
        String name() {
            return cut.piece().name().text();
        }
    }

    private static Stream<Held> everyCut() {
        return Catalogue.species().stream()
                .flatMap(name -> Printed.cuts(CatalogueSpecies.named(name).orElseThrow())
                        .map(cut -> new Held(name.text(), cut)));
    }

    private static String sources(Cited<?> figure) {
        return String.join(
                "; ", figure.sources().stream().map(s -> s.name().text()).toList());
    }

    private static List<String> columns(String file, int count) {
        return Printed.rows(file).stream()
                .map(row -> String.join(" | ", row.subList(0, count)))
                .toList();
    }
}
