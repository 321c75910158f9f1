package dev.gambrel.conformance.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.CarcassWeight;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.YieldRow;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.plan.Kind;
import dev.gambrel.yields.portions.PortionYield;
import dev.gambrel.yields.table.YieldTable;
import dev.gambrel.yields.working.Working;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Three whole sheets as a processor or a buyer would write them. All their figures are invented; what follows is worked by hand. */
class FragmentsTest {
    private static final Working IN_WINTER = Working.AS_WRITTEN.given(TradeName.of("season"), TradeName.of("winter"));
    private static final Working IN_SUMMER = Working.AS_WRITTEN.given(TradeName.of("season"), TradeName.of("summer"));

    static List<Path> files() {
        return Corpus.specifications("fragments");
    }

    private static CutTree tree(Path file) {
        return new SpecCompiler().compile(file).orElseThrow().tree();
    }

    private static ExpectedYields yields(String file, Working working, String kilograms) {
        CutTree tree = tree(Corpus.folder("fragments").resolve(file + ".cuts"));
        Quantity weight = Quantity.of(kilograms, Unit.KILOGRAM);
        return Yields.of(tree, asked(tree, working))
                .forCarcass(new CarcassWeight(weight, tree.carcass().basis()))
                .orElseThrow();
    }

    /** A grade may only be given where there is one. */
    private static Working asked(CutTree tree, Working working) {
        return tree.carcass().grades().isEmpty() ? Working.AS_WRITTEN : working;
    }

    @ParameterizedTest
    @MethodSource("files")
    void a_whole_sheet_is_sound_and_gives_the_expected_table(Path file) {
        assertEquals("", Corpus.report(new SpecCompiler().compile(file).diagnostics()), "nothing is found");
        CutTree tree = tree(file);
        ExpectedYields yields =
                Yields.of(tree, asked(tree, IN_WINTER)).forTypicalCarcass().orElseThrow();
        Corpus.hold(YieldTable.of(yields, Unit.KILOGRAM, 3).text(), Corpus.twin(file));
    }

    @Test
    void the_three_are_there() {
        assertEquals(3, files().size());
    }

    /** 64 % of 9.5 % of 20 kg and of 24 kg. */
    @Test
    void a_pair_of_racks_weighs_what_the_sheet_is_said_to_give() {
        assertEquals(1.2160, trimmedBestEnd("20"), 1e-9);
        assertEquals(1.4592, trimmedBestEnd("24"), 1e-9);
    }

    private static double trimmedBestEnd(String kilograms) {
        return yields("hogget_saddle_end_and_racks", IN_SUMMER, kilograms).rows().stream()
                .filter(row -> row.path().equals(TreePath.ROOT.then(TradeName.of("best end"))))
                .filter(row -> row.kind() == Kind.TRIMMED)
                .findFirst()
                .flatMap(YieldRow::allPieces)
                .orElseThrow()
                .mean();
    }

    @Test
    void the_group_takes_chops_in_summer_and_eyes_in_winter() {
        assertTrue(ways(IN_SUMMER).contains("short loin / chops"));
        assertTrue(ways(IN_WINTER).contains("short loin / eyes"));
    }

    private static List<String> ways(Working season) {
        return yields("hogget_saddle_end_and_racks", season, "22").ways().stream()
                .map(way -> way.path().toString())
                .toList();
    }

    /** 39.5 % of 28 kg, half of it a haunch, of which 5 % is left: 95.0 % is named. */
    @Test
    void what_is_left_of_the_haunch_is_mince() {
        double mince = yields("fallow_haunch_for_seam_steaks", IN_SUMMER, "28")
                .row(new TreePath(List.of(TradeName.of("haunch"), TradeName.of("rest"))))
                .flatMap(YieldRow::allPieces)
                .orElseThrow()
                .mean();
        assertEquals(28 * 0.395 * 0.05, mince, 1e-9);
    }

    /** 8 oz is 226.796185 g (the international avoirdupois pound, 1959: 453.59237 g). */
    @Test
    void the_steak_of_the_sirloin_is_of_eight_ounces() {
        PortionYield steak = PortionYield.of(yields("beef_sirloin_for_eight_ounce_steaks", IN_SUMMER, "320"))
                .get(0);
        assertEquals(
                0.226796185,
                steak.from().portion().aim().targetWeight().orElseThrow().mean(),
                1e-12);
    }
}
