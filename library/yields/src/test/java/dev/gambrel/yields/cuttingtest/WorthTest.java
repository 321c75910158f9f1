package dev.gambrel.yields.cuttingtest;

import static dev.gambrel.yields.Sheet.cut;
import static dev.gambrel.yields.Sheet.hogget;
import static dev.gambrel.yields.Sheet.loss;
import static dev.gambrel.yields.Sheet.pair;
import static dev.gambrel.yields.Sheet.trim;
import static dev.gambrel.yields.Sheet.yields;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.cuttingtest.PartReading.State;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;

/** An invented hogget of Marram Isle Meats of 20 kg: 200 g of what should be trimmed leg lie in its fat. All money by hand. */
class WorthTest {
    private static final Scale BENCH = Scale.ofDivision("bench", 0.002);
    private static final ExpectedYields EXPECTED = yields(
            hogget(
                    pair("leg", "40.0 ± 1.0", trim("fat", "10.0 ± 1.0", "mince")),
                    cut("saddle", "59.5 ± 1.0"),
                    loss("drip", "0.5 ± 0.1")),
            "20");
    private static final PartPrice LEG = price("9.00", State.WHOLE, "leg");
    private static final PartPrice TRIMMED = price("10.00", State.TRIMMED, "leg");
    private static final PartPrice FAT = price("2.00", State.WHOLE, "leg", "fat");
    private static final PartPrice SADDLE = price("5.00", State.WHOLE, "saddle");

    private static TreePath path(String... part) {
        return new TreePath(Arrays.stream(part).map(TradeName::of).toList());
    }

    private static PartPrice price(String money, State state, String... part) {
        return new PartPrice(path(part), state, new BigDecimal(money));
    }

    private static PartReading reading(double kilograms, State state, String... part) {
        return new PartReading(path(part), state, List.of(new Weighing(BENCH, kilograms, 1)));
    }

    private static List<PartReading> sheet() {
        return new ArrayList<>(List.of(
                reading(20.0, State.WHOLE),
                reading(8.0, State.WHOLE, "leg"),
                reading(7.0, State.TRIMMED, "leg"),
                reading(1.0, State.WHOLE, "leg", "fat"),
                reading(11.9, State.WHOLE, "saddle"),
                reading(0.1, State.WHOLE, "drip")));
    }

    private static Worth worth(List<PartReading> sheet, PartPrice... prices) {
        return Worth.of(CuttingTest.of(EXPECTED, sheet), List.of(prices));
    }

    private static List<String> names(Worth worth) {
        return worth.lines().stream()
                .map(line -> EXPECTED.plan().node(line.node()).path() + (line.isWhole() ? ", whole" : "") + " "
                        + line.perKilogram())
                .toList();
    }

    /** 70.00 + 2.00 + 59.50 for 72.00 + 1.60 + 59.50. */
    @Test
    void a_cut_is_worth_its_parts_where_all_of_them_have_a_price() {
        Worth worth = worth(sheet(), LEG, TRIMMED, FAT, SADDLE);
        assertEquals(Set.of("saddle 5.00", "leg / fat 2.00", "leg 10.00"), Set.copyOf(names(worth)));
        assertEquals(131.50, worth.actual().mean(), 1e-9);
        assertEquals(133.10, worth.expected().mean(), 1e-9);
        assertEquals(-1.60, worth.difference().orElseThrow().mean(), 1e-9);
        assertEquals(1, worth.notUsed().size());
        assertEquals(path("leg"), EXPECTED.plan().node(worth.notUsed().get(0)).path());
    }

    /** 8.0 kg at 9.00, and the saddle. */
    @Test
    void a_cut_is_valued_whole_where_one_of_its_parts_has_no_price() {
        Worth worth = worth(sheet(), LEG, TRIMMED, SADDLE);
        assertEquals(131.50, worth.actual().mean(), 1e-9);
        assertTrue(names(worth).contains("leg, whole 9.00"), names(worth).toString());
        assertEquals(1, worth.notUsed().size());
    }

    @Test
    void a_cut_without_a_price_of_its_own_is_valued_as_far_as_its_parts_have_one() {
        Worth worth = worth(sheet(), TRIMMED);
        assertEquals(70.00, worth.actual().mean(), 1e-9);
        assertEquals(2, worth.withoutPrice().size());
    }

    @Test
    void a_price_of_what_was_not_weighed_apart_is_told_and_not_used() {
        List<PartReading> sheet = sheet();
        sheet.removeIf(reading -> reading.part().equals(path("leg", "fat")) || reading.state() == State.TRIMMED);
        Worth whole = worth(sheet, LEG, TRIMMED, FAT, SADDLE);
        assertEquals(131.50, whole.actual().mean(), 1e-9);
        assertEquals(2, whole.notUsed().size());
        Worth parts = worth(sheet, TRIMMED, FAT, SADDLE);
        assertEquals(59.50, parts.actual().mean(), 1e-9);
        assertEquals(2, parts.notKnown().size());
    }

    /** The expected share of trim strays by 1 % of 8 kg, so that 200 g are more than two of its deviations. */
    @Test
    void meat_that_is_missing_beyond_chance_is_told_with_its_weight() {
        Shortfall found = Shortfall.of(CuttingTest.of(EXPECTED, sheet()), 0.05).orElseThrow();
        assertEquals(0.2, found.missing().mean(), 1e-9);
        double deviation = Math.sqrt(found.missing().spread().variance());
        assertTrue(deviation > 0.08 && deviation < 0.09, String.valueOf(deviation));
        assertTrue(Shortfall.of(CuttingTest.of(EXPECTED, sheet()), 0.01).isEmpty());
    }

    /** What is not stated is never 0: without the carcass nothing is expected. */
    @Test
    void where_the_carcass_was_not_weighed_nothing_is_expected() {
        Worth worth = worth(
                List.of(
                        reading(8.0, State.WHOLE, "leg"),
                        reading(7.0, State.TRIMMED, "leg"),
                        reading(1.0, State.WHOLE, "leg", "fat")),
                TRIMMED,
                FAT);
        assertEquals(72.00, worth.actual().mean(), 1e-9);
        assertFalse(worth.isStated());
        assertTrue(worth.difference().isEmpty());
    }
}
