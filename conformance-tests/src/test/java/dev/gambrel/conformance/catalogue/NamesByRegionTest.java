package dev.gambrel.conformance.catalogue;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.catalogue.CatalogueCut;
import dev.gambrel.compiler.catalogue.CatalogueSpecies;
import dev.gambrel.compiler.source.Catalogue;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.anatomy.OtherName;
import dev.gambrel.tree.anatomy.Piece;
import dev.gambrel.tree.inspection.TreeCode;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import java.util.stream.Collectors;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.MethodSource;

/**
 * What a piece is called where. That UK sirloin is US strip loin, UK rump US sirloin, knuckle with and without its cap, and
 * that a UK leg of beef is a hind shank are in the UNECE and Australian lists and an American course (see numbers.csv);
 * the other names are common practice, no source.
 */
class NamesByRegionTest {
    private static final String TRAPS = "/catalogue/traps.csv";
    private static final String ONE_MEANING = "/catalogue/one-meaning.csv";

    static List<TradeName> species() {
        return Catalogue.species();
    }

    @ParameterizedTest
    @CsvFileSource(resources = ONE_MEANING, delimiter = '|', numLinesToSkip = 1)
    void a_name_leads_to_its_piece(String species, String word, String region, String piece) {
        List<CatalogueCut> cuts = Printed.species(species).cutsCalled(TradeName.of(word));
        assertEquals(List.of(piece), cuts.stream().map(NamesByRegionTest::name).toList());
        assertTrue(region == null || isCalled(cuts.get(0).piece(), word, region), word + " in " + region);
        assertFalse(findings(species, word, "").contains(TreeCode.AMBIGUOUS_NAME.id()));
    }

    @ParameterizedTest
    @CsvFileSource(resources = TRAPS, delimiter = '|', numLinesToSkip = 1)
    void a_name_that_means_two_pieces_is_never_taken_for_one(String species, String word, String region, String piece) {
        List<CatalogueCut> cuts = Printed.species(species).cutsCalled(TradeName.of(word.toUpperCase(Locale.ROOT)));
        assertTrue(cuts.size() > 1, word);
        assertTrue(
                cuts.stream().anyMatch(cut -> name(cut).equals(piece) && isCalled(cut.piece(), word, region)),
                word + " in " + region);
        assertTrue(findings(species, word, "").contains(TreeCode.AMBIGUOUS_NAME.id()), word);
    }

    @ParameterizedTest
    @CsvFileSource(resources = TRAPS, delimiter = '|', numLinesToSkip = 1)
    void who_says_which_piece_is_meant_is_not_asked(String species, String word, String region, String piece) {
        assertFalse(findings(species, word, ", also " + piece).contains(TreeCode.AMBIGUOUS_NAME.id()), word);
    }

    @ParameterizedTest
    @CsvFileSource(resources = TRAPS, delimiter = '|', numLinesToSkip = 1)
    void a_piece_tells_that_its_name_means_another_piece_too(String species, String word, String region, String piece) {
        CatalogueCut cut =
                Printed.species(species).cutsCalled(TradeName.of(piece)).get(0);
        Set<String> others = Printed.species(species).cutsCalled(TradeName.of(word)).stream()
                .map(NamesByRegionTest::name)
                .filter(other -> !other.equals(piece))
                .collect(Collectors.toSet());
        assertEquals(
                others,
                cut.sameWords().stream()
                        .filter(same -> same.word().name().equals(TradeName.of(word)))
                        .map(same -> same.means().text())
                        .collect(Collectors.toSet()));
    }

    /** Else the other meaning would be passed over without a word. */
    @ParameterizedTest
    @MethodSource("species")
    void no_piece_has_for_its_own_name_what_another_is_called_somewhere(TradeName species) {
        CatalogueSpecies known = CatalogueSpecies.named(species).orElseThrow();
        Set<TradeName> own = known.pieces().stream().map(Piece::name).collect(Collectors.toSet());
        assertEquals(known.pieces().size(), own.size(), "two pieces of one name");
        List<String> shadowed = known.pieces().stream()
                .flatMap(piece -> piece.otherNames().stream())
                .map(OtherName::name)
                .filter(own::contains)
                .map(TradeName::text)
                .toList();
        assertEquals(List.of(), shadowed);
    }

    @ParameterizedTest
    @MethodSource("species")
    void a_name_of_several_pieces_says_of_each_where_it_is_called_so(TradeName species) {
        CatalogueSpecies known = CatalogueSpecies.named(species).orElseThrow();
        List<String> unsaid = Printed.cuts(known)
                .flatMap(cut -> cut.sameWords().stream())
                .filter(same -> same.word().regions().isEmpty())
                .map(same -> same.word().name() + " of " + same.means())
                .toList();
        assertEquals(List.of(), unsaid);
    }

    /** So that the list of traps here, and in the language reference, is whole. */
    @ParameterizedTest
    @MethodSource("species")
    void every_name_of_several_pieces_is_tested_as_a_trap(TradeName species) {
        CatalogueSpecies known = CatalogueSpecies.named(species).orElseThrow();
        Set<String> words = Printed.cuts(known)
                .flatMap(cut -> cut.sameWords().stream())
                .map(same -> same.word().name().text())
                .collect(Collectors.toSet());
        Set<String> tested = Printed.rows(TRAPS).stream()
                .filter(row -> row.get(0).equals(species.text()))
                .map(row -> row.get(1))
                .collect(Collectors.toSet());
        assertEquals(words, tested);
    }

    private static String name(CatalogueCut cut) {
        return cut.piece().name().text();
    }

    private static boolean isCalled(Piece piece, String word, String region) {
        return piece.otherNames().stream()
                .anyMatch(other -> other.name().equals(TradeName.of(word))
                        && (other.regions().isEmpty() || other.regions().contains(region)));
    }

    private static Set<String> findings(String species, String cut, String also) {
        String sheet =
                "language 1\nuse \"catalogue:" + species + "\"\nspecification \"House\" revision 1 for " + species
                        + "\ncarcass cold\nstream mince, saleable\ncut " + cut + " 5 %, two per carcass" + also
                        + "\nrest -> mince\n";
        return new SpecCompiler()
                .compile(new SourceText("house.cuts", sheet), Sources.none()).diagnostics().stream()
                        .map(Diagnostic::code)
                        .map(code -> code.id())
                        .collect(Collectors.toSet());
    }
}
