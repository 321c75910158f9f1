package dev.gambrel.yields.cuttingtest;

import static dev.gambrel.yields.Sheet.cut;
import static dev.gambrel.yields.Sheet.hogget;
import static dev.gambrel.yields.Sheet.loss;
import static dev.gambrel.yields.Sheet.pair;
import static dev.gambrel.yields.Sheet.trim;
import static dev.gambrel.yields.Sheet.yields;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.cuttingtest.PartReading.State;
import dev.gambrel.yields.reconciliation.CutBalance;
import dev.gambrel.yields.reconciliation.ReadingTest;
import dev.gambrel.yields.reconciliation.Reconciled;
import dev.gambrel.yields.reconciliation.error.Suspect;
import dev.gambrel.yields.reconciliation.pattern.Explanation;
import dev.gambrel.yields.reconciliation.pattern.Pattern;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Invented sheets of Marram Isle Meats: a hogget of 22 kg, the rail scale in steps of 20 g, the bench scale in steps of 2 g. */
class CuttingTestTest {
    private static final double LEVEL = 0.05;
    private static final Scale RAIL = Scale.ofDivision("rail", 0.020);
    private static final Scale BENCH = new Scale("bench", 0.002, 0.0003, 0.001);

    private static final CutTree HOGGET = hogget(
            pair(
                    "leg",
                    "33.0",
                    cut("chump", "15.0"),
                    cut("topside", "45.0", trim("fat", "4.0", "mince"), trim("silverskin", "2.0", "waste")),
                    cut("silverside", "39.6", trim("fat", "5.0", "mince")),
                    loss("saw", "0.4 ± 0.1")),
            cut("saddle", "26.0"),
            pair("shoulder", "40.5"),
            loss("drip", "0.5 ± 0.1"));

    private static TreePath path(String... names) {
        return new TreePath(Arrays.stream(names).map(TradeName::of).toList());
    }

    private static PartReading reading(Scale scale, double kilograms, int times, State state, String... part) {
        return new PartReading(path(part), state, List.of(new Weighing(scale, kilograms, times)));
    }

    /** What comes out if nothing goes wrong, in the shares of the specification but for a heavier chump. */
    private static List<PartReading> sheet() {
        return new ArrayList<>(List.of(
                reading(RAIL, 22.00, 1, State.WHOLE),
                reading(BENCH, 7.260, 1, State.WHOLE, "leg"),
                reading(BENCH, 1.139, 1, State.WHOLE, "leg", "chump"),
                reading(BENCH, 3.246, 1, State.WHOLE, "leg", "topside"),
                reading(BENCH, 3.051, 2, State.TRIMMED, "leg", "topside"),
                reading(BENCH, 0.130, 1, State.WHOLE, "leg", "topside", "fat"),
                reading(BENCH, 0.066, 1, State.WHOLE, "leg", "topside", "silverskin"),
                reading(BENCH, 2.709, 2, State.TRIMMED, "leg", "silverside"),
                reading(BENCH, 0.142, 1, State.WHOLE, "leg", "silverside", "fat"),
                reading(BENCH, 5.722, 2, State.WHOLE, "saddle"),
                reading(BENCH, 8.908, 2, State.WHOLE, "shoulder")));
    }

    private static List<PartReading> with(PartReading other) {
        List<PartReading> sheet = sheet();
        sheet.replaceAll(r -> r.part().equals(other.part()) && r.state() == other.state() ? other : r);
        return sheet;
    }

    private static CuttingTest test(List<PartReading> sheet) {
        return CuttingTest.of(yields(HOGGET, "22"), sheet);
    }

    private static int node(CuttingTest test, State state, String... part) {
        return test.node(path(part), state).orElseThrow();
    }

    @Test
    void aGoodSheetBalancesAndNothingIsSuspected() {
        CuttingTest test = test(sheet());
        assertEquals(3, test.reconciled().test().degreesOfFreedom());
        assertTrue(test.reconciled().test().probability() > 0.05);
        assertEquals(List.of(), test.suspects(LEVEL).found());
        assertEquals(List.of(), test.explanations(LEVEL));
        assertEquals(List.of(), test.moreOutThanIn(LEVEL));
        assertEquals(List.of(), test.unplaced());
    }

    @Test
    void theLossThatWasExpectedIsReconciledToo() {
        CuttingTest test = test(sheet());
        int drip = node(test, State.WHOLE, "drip");
        Reconciled.Weight weight =
                assertInstanceOf(Reconciled.Weight.class, test.reconciled().weight(drip));
        assertEquals(0.110, weight.estimate().mean(), 0.01);
        assertInstanceOf(ReadingTest.Checked.class, test.reconciled().reading(drip));
        assertTrue(test.reading(drip).isEmpty());
    }

    @Test
    void aPartHasItsShareOfWhatItIsCutFromWithItsDoubt() {
        CuttingTest test = test(sheet());
        double share = test.share(node(test, State.WHOLE, "leg", "chump"))
                .orElseThrow()
                .ofMeans();
        assertEquals(1.139 / 7.260, share, 0.0005);
    }

    @Test
    void whatTheSpecificationDoesNotHaveIsInNoBalance() {
        List<PartReading> sheet = sheet();
        PartReading kidneys = reading(BENCH, 0.12, 1, State.WHOLE, "kidneys");
        sheet.add(kidneys);
        assertEquals(List.of(kidneys), test(sheet).unplaced());
        sheet.add(reading(BENCH, 1.1, 1, State.WHOLE, "leg", "chump"));
        assertThrows(IllegalArgumentException.class, () -> test(sheet));
    }

    @Test
    void aLossWhoseSpreadIsNotStatedLeavesItsCutUnchecked() {
        CutTree tree = hogget(cut("leg", "99.5"), loss("drip", "0.5"));
        CuttingTest test = CuttingTest.of(
                yields(tree, "22"),
                List.of(reading(RAIL, 22, 1, State.WHOLE), reading(BENCH, 21.8, 1, State.WHOLE, "leg")));
        assertEquals(0, test.reconciled().test().degreesOfFreedom());
        Reconciled.Weight drip =
                assertInstanceOf(Reconciled.Weight.class, test.reconciled().weight(node(test, State.WHOLE, "drip")));
        assertEquals(0.2, drip.estimate().mean(), 1e-12);
    }

    @Test
    void moreThanWentInIsToldWhateverTheLoss() {
        CutTree tree = hogget(cut("leg", "99.5"), loss("drip", "0.5"));
        CuttingTest test = CuttingTest.of(
                yields(tree, "22"),
                List.of(reading(RAIL, 22, 1, State.WHOLE), reading(BENCH, 22.4, 1, State.WHOLE, "leg")));
        CutBalance balance = test.moreOutThanIn(LEVEL).get(0);
        assertEquals(0, balance.cut());
        assertEquals(0.4, balance.excess().mean(), 1e-9);
        assertEquals(List.of(node(test, State.WHOLE, "drip")), test.reconciled().negative());
    }

    @Test
    void oneShoulderWrittenAsBothIsOffered() {
        CuttingTest test = test(with(reading(BENCH, 4.454, 1, State.WHOLE, "shoulder")));
        Suspect.OneBalance suspect =
                (Suspect.OneBalance) test.suspects(LEVEL).found().get(0);
        assertEquals(4.454, suspect.missing().mean(), 0.1);
        assertTrue(suspect.readings().size() > 1);
        Explanation best = test.explanations(LEVEL).get(0);
        assertEquals(new Pattern.OneWrittenAsPair(node(test, State.WHOLE, "shoulder")), best.pattern());
        assertEquals(1, best.size().mean(), 0.02);
        assertTrue(best.after().probability() > 0.05);
    }

    @Test
    void aPairCountedTwiceIsOffered() {
        CuttingTest test = test(with(reading(BENCH, 17.816, 2, State.WHOLE, "shoulder")));
        assertEquals(
                new Pattern.PairCountedTwice(node(test, State.WHOLE, "shoulder")),
                test.explanations(LEVEL).get(0).pattern());
    }

    @Test
    void aTopsideWeighedBeforeItsTrimIsOfferedWithThatTrim() {
        CuttingTest test = test(with(reading(BENCH, 3.247, 2, State.TRIMMED, "leg", "topside")));
        Explanation best = test.explanations(LEVEL).get(0);
        int topside = node(test, State.TRIMMED, "leg", "topside");
        int fat = node(test, State.WHOLE, "leg", "topside", "fat");
        int silverskin = node(test, State.WHOLE, "leg", "topside", "silverskin");
        assertEquals(new Pattern.WeighedBeforeTrimming(List.of(topside), List.of(fat, silverskin)), best.pattern());
        assertEquals(1, best.size().mean(), 0.1);
    }

    @Test
    void poundsWrittenAsKilogramsAreOffered() {
        CuttingTest test = test(with(reading(RAIL, 48.50, 1, State.WHOLE)));
        assertEquals(
                new Pattern.PoundsAsKilograms(List.of(0)),
                test.explanations(LEVEL).get(0).pattern());
    }

    /** A tray of 120 g in each weighing on the bench; the rail has none. */
    @Test
    void aTrayThatWasNotTaredIsOfferedWithItsWeight() {
        List<PartReading> sheet = sheet();
        sheet.replaceAll(r -> r.weighings().get(0).scale().equals(BENCH)
                ? new PartReading(
                        r.part(),
                        r.state(),
                        List.of(new Weighing(
                                BENCH,
                                r.kilograms() + 0.120 * r.weighings().get(0).times(),
                                r.weighings().get(0).times())))
                : r);
        Explanation best = test(sheet).explanations(LEVEL).get(0);
        Pattern.SameAmountEachWeighing tray = assertInstanceOf(Pattern.SameAmountEachWeighing.class, best.pattern());
        assertEquals("bench", tray.scale());
        assertEquals(0.120, best.size().mean(), 0.005);
        assertTrue(best.after().probability() > 0.05);
    }

    /** The bench shows 3 % too much, the rail is right. */
    @Test
    void aScaleOutOfCalibrationIsOfferedWithItsError() {
        List<PartReading> sheet = sheet();
        sheet.replaceAll(r -> r.weighings().get(0).scale().equals(BENCH)
                ? new PartReading(
                        r.part(),
                        r.state(),
                        List.of(new Weighing(
                                BENCH,
                                1.03 * r.kilograms(),
                                r.weighings().get(0).times())))
                : r);
        List<Explanation> all = test(sheet).explanations(LEVEL);
        assertTrue(all.stream()
                .anyMatch(e -> e.pattern() instanceof Pattern.SamePartOfEachWeight part
                        && part.scale().equals("bench")
                        && Math.abs(e.size().mean() - 0.03) < 0.003));
        assertTrue(all.get(0).pattern() instanceof Pattern.SamePartOfEachWeight);
    }

    /** Uniform within a step of 2 g: its variance is a twelfth of the square of the step (JCGM 100:2008, 4.3.7). */
    @Test
    void divisionAndTareErrAtEachWeighingAndCalibrationAtAllAlike() {
        Scale scale = new Scale("bench", 0.012, 0.001, 0.003);
        assertEquals(4 * (0.000012 + 0.000009) + 0.0001, scale.variance(10, 4), 1e-15);
        PartReading both = new PartReading(
                path("leg"), State.WHOLE, List.of(new Weighing(scale, 4, 1), new Weighing(scale, 6, 3)));
        assertEquals(10, both.kilograms());
        assertEquals(scale.variance(10, 4), both.variance(), 1e-18);
        PartReading onTwo =
                new PartReading(path("leg"), State.WHOLE, List.of(new Weighing(scale, 4, 1), new Weighing(RAIL, 6, 3)));
        assertEquals(scale.variance(4, 1) + RAIL.variance(6, 3), onTwo.variance(), 1e-18);
        assertThrows(IllegalArgumentException.class, () -> new Scale("bench", -0.01, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new Weighing(scale, 1, 0));
        assertThrows(IllegalArgumentException.class, () -> new PartReading(path(), State.WHOLE, List.of()));
    }
}
