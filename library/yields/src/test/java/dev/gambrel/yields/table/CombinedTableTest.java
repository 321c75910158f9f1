package dev.gambrel.yields.table;

import static dev.gambrel.yields.Sheet.cut;
import static dev.gambrel.yields.Sheet.hogget;
import static dev.gambrel.yields.Sheet.kilograms;
import static dev.gambrel.yields.Sheet.loss;
import static dev.gambrel.yields.Sheet.pair;
import static dev.gambrel.yields.Sheet.rest;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.CarcassLot;
import dev.gambrel.yields.CombinedYields;
import dev.gambrel.yields.Doubt;
import dev.gambrel.yields.RandomSheets;
import dev.gambrel.yields.Yields;
import java.util.List;
import java.util.Map;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

class CombinedTableTest {
    private static final CutTree LEG = hogget(
            pair("leg", "33 ± 0.9", cut("topside", "20 ± 1"), loss("drip", "1 ± 0.2"), rest("mince")),
            cut("loin", "20"),
            rest("mince"));

    private static CombinedYields yields(CutTree tree, CarcassLot carcasses, Doubt doubt) {
        return Yields.of(tree).forCarcasses(carcasses, doubt).orElseThrow();
    }

    private static CarcassLot alike(int number) {
        return CarcassLot.alike(number, kilograms("20", Basis.COLD));
    }

    private static String text(CarcassLot carcasses, Doubt doubt) {
        return CombinedTable.of(yields(LEG, carcasses, doubt), Unit.KILOGRAM, 1).text();
    }

    /** By hand: a leg 6.6 kg ± 0.18 kg a carcass; of 100 from 36 tests ± 1.8 and ± 3.0, together ± 3.499. */
    @Test
    void what_carcasses_differ_by_and_the_doubt_stand_side_by_side() {
        String text = text(alike(100), Doubt.fromTests(36));
        assertTrue(text.startsWith("""
                Marram hogget, revision 3, sheep
                Expected for 100 carcasses of 20.0 kg each, weighed cold, 2000.0 kg together
                The mean shares are taken as found by 36 cutting tests

                """), text);
        String one = text.replaceAll(" +", " ");
        assertTrue(one.contains("\n leg 200 660.0 1.80 3.00 653.1 to 666.9\n"), text);
        assertTrue(one.contains("\n loin 100 400.0 not stated not stated not stated product\n"), text);
        assertTrue(one.contains("\nall that was weighed 2000.0 0.00 0.00 2000.0\n"), text);
        assertTrue(text.contains("doubt counted"), text);
    }

    /** 660 kg ± 1.8 kg: 656.5 to 663.5. */
    @Test
    void where_nothing_is_said_of_the_doubt_the_range_says_that_it_is_left_out() {
        String text = text(alike(100), Doubt.NOT_SAID);
        assertTrue(
                text.contains(
                        "\nHow sure the mean shares are is not said: the ranges hold only what carcasses differ by\n"),
                text);
        assertTrue(text.contains("doubt left out"), text);
        assertTrue(text.replaceAll(" +", " ").contains("\n leg 200 660.0 1.80 not stated 656.5 to 663.5\n"), text);
        String csv = CombinedTable.of(yields(LEG, alike(100), Doubt.NOT_SAID), Unit.KILOGRAM, 1)
                .csv();
        assertTrue(
                csv.contains("parts,leg,leg,,between carcasses,1,200,660.0,1.80,not stated,not stated,656.5,663.5\n"),
                csv);
    }

    @Test
    void the_heading_says_what_the_carcasses_weigh() {
        Expected each = new Expected.PlusMinus(Quantity.of("20", Unit.KILOGRAM), Quantity.of("1.5", Unit.KILOGRAM));
        Expected open = new Expected.Mean(Quantity.of("20", Unit.KILOGRAM));
        CarcassLot weighed = CarcassLot.weighed(List.of(kilograms("19", Basis.COLD), kilograms("22", Basis.COLD)));
        assertTrue(text(weighed, Doubt.NONE)
                .contains("2 carcasses of 20.5 kg on average, weighed cold, 41.0 kg together"));
        assertTrue(text(CarcassLot.expected(9, each, Basis.COLD), Doubt.NONE)
                .contains("9 carcasses of 20.0 kg ± 1.50 kg each"));
        assertTrue(text(CarcassLot.expected(9, open, Basis.COLD), Doubt.NONE)
                .contains("20.0 kg each, give or take what is not stated"));
        assertTrue(text(alike(1), Doubt.fromTests(1)).contains("1 carcass of 20.0 kg each, weighed cold"));
        assertTrue(text(alike(1), Doubt.fromTests(1)).contains("found by 1 cutting test\n"));
        assertTrue(text(alike(1), Doubt.NONE).contains("The mean shares are taken as known exactly\n"));
        assertTrue(text(alike(1), new Doubt.OfParts(Map.of())).contains("is said of each part\n"));
    }

    @Test
    void weights_are_not_printed_in_metres() {
        CombinedYields yields = yields(LEG, alike(1), Doubt.NONE);
        assertThrows(IllegalArgumentException.class, () -> CombinedTable.of(yields, Unit.MILLIMETRE, 1));
    }

    @Provide
    Arbitrary<CutTree> anySheets() {
        return RandomSheets.anySheets();
    }

    @Property(tries = 100)
    void printed_weights_add_up(
            @ForAll("anySheets") CutTree tree, @ForAll @IntRange(min = 1, max = 10_000) int number) {
        String csv = CombinedTable.of(yields(tree, alike(number), Doubt.NOT_SAID), Unit.KILOGRAM, 2)
                .csv();
        List<String[]> rows = csv.lines()
                .skip(1)
                .map(line -> line.replaceAll("\"[^\"]*\"", "quoted").split(","))
                .toList();
        long ends = 0;
        long outcomes = 0;
        for (int i = 0; i < rows.size(); i++) {
            int level = Integer.parseInt(rows.get(i)[5]);
            boolean isPart = rows.get(i)[0].equals("parts");
            boolean isEnd = i + 1 == rows.size() || Integer.parseInt(rows.get(i + 1)[5]) <= level;
            long steps = Long.parseLong(rows.get(i)[7].replace(".", ""));
            ends += isPart && isEnd ? steps : 0;
            outcomes += !isPart && level == 1 ? steps : 0;
        }
        assertEquals(2_000L * number, ends);
        assertEquals(2_000L * number, outcomes);
    }
}
