package dev.gambrel.yields.testedcuts;

import static dev.gambrel.yields.Sheet.cut;
import static dev.gambrel.yields.Sheet.hogget;
import static dev.gambrel.yields.Sheet.loss;
import static dev.gambrel.yields.Sheet.pair;
import static dev.gambrel.yields.Sheet.trim;
import static dev.gambrel.yields.Sheet.yields;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.cuttingtest.CuttingTest;
import dev.gambrel.yields.cuttingtest.PartReading;
import dev.gambrel.yields.cuttingtest.PartReading.State;
import dev.gambrel.yields.cuttingtest.Scale;
import dev.gambrel.yields.cuttingtest.Weighing;
import dev.gambrel.yields.houseshares.TableWorth;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Invented tests of Marram Isle Meats: legs of chump, topside and shank, with a loss at the saw. */
class TestedCutsTest {
    private static final Scale BENCH = Scale.ofDivision("bench", 0.002);
    private static final CutTree HOGGET = hogget(
            pair(
                    "leg",
                    "33.0 ± 0.9",
                    cut("chump", "20.0 ± 1.0"),
                    cut("topside", "30.0 ± 1.0", trim("fat", "4.0 ± 1.0", "mince")),
                    cut("shank", "49.0 ± 1.2"),
                    loss("saw", "1.0 ± 0.2")),
            cut("rest of it", "67.0 ± 0.9"));

    private static TreePath path(String... names) {
        return new TreePath(Arrays.stream(names).map(TradeName::of).toList());
    }

    private static PartReading reading(double kilograms, State state, String... part) {
        return new PartReading(path(part), state, List.of(new Weighing(BENCH, kilograms, 1)));
    }

    private static PartReading whole(double kilograms, String... part) {
        return reading(kilograms, State.WHOLE, part);
    }

    /** A leg of 7 kg, of which 50 g are gone at the saw. */
    private static List<PartReading> leg(double chump, double topside, double shank) {
        return List.of(
                whole(7.0, "leg"),
                whole(chump, "leg", "chump"),
                whole(topside, "leg", "topside"),
                whole(shank, "leg", "shank"));
    }

    private static NamedTest test(String name, List<PartReading> sheet) {
        return new NamedTest(name, CuttingTest.of(yields(HOGGET, "21"), sheet));
    }

    private static TestedCut tested(TreePath path, NamedTest... tests) {
        return TestedCuts.of(HOGGET, List.of(tests)).cuts().stream()
                .filter(cut -> cut.path().equals(path))
                .findFirst()
                .orElseThrow();
    }

    private static TestedCut.Found found(NamedTest... tests) {
        return assertInstanceOf(TestedCut.Found.class, tested(path("leg"), tests));
    }

    private static final NamedTest MONDAY = test("monday", leg(1.450, 2.050, 3.450));
    private static final NamedTest TUESDAY = test("tuesday", leg(1.390, 2.110, 3.450));

    @Test
    void theLossThatNobodyWeighedKeepsWhatIsStatedAndTheOthersShareTheRest() {
        FoundShares shares = FoundShares.of(found(MONDAY), Mean.SUMS, new Prior.None());
        assertEquals(0.99, shares.cut().leftByKept(), 1e-12);
        assertEquals(
                List.of("saw"),
                shares.cut().kept().stream().map(TestedPart::name).toList());
        // 1.450 of 6.950 kg, of 99 %: worked out by hand.
        assertEquals(0.99 * 1.450 / 6.950, shares.shares().get(0).share(), 1e-12);
        assertEquals(
                0.99, shares.shares().stream().mapToDouble(FoundShare::share).sum(), 1e-12);
    }

    @Test
    void whatIsMissingIsToldBesideTheLossAndNotTakenForIt() {
        assertEquals(0.050 / 7.0, found(MONDAY, TUESDAY).meanMissing().orElseThrow(), 1e-12);
    }

    @Test
    void aLossThatEveryTestWeighedIsFoundLikeAnyPart() {
        List<PartReading> sheet = new ArrayList<>(leg(1.450, 2.050, 3.450));
        sheet.add(whole(0.050, "leg", "saw"));
        TestedCut.Found weighed = found(test("wednesday", sheet));
        assertEquals(List.of(), weighed.kept());
        assertEquals(4, weighed.parts().size());
        assertEquals(1, found(test("wednesday", sheet), MONDAY).kept().size(), "Monday nobody weighed it");
    }

    @Test
    void noShareRestsOnWhatTheSpecificationExpects() {
        CutTree other = hogget(
                pair(
                        "leg",
                        "43.0 ± 0.9",
                        cut("chump", "10.0 ± 1.0"),
                        cut("topside", "40.0 ± 1.0", trim("fat", "4.0 ± 1.0", "mince")),
                        cut("shank", "49.0 ± 1.2"),
                        loss("saw", "1.0 ± 0.2")),
                cut("rest of it", "57.0 ± 0.9"));
        NamedTest sameWeights = new NamedTest("monday", CuttingTest.of(yields(other, "21"), leg(1.450, 2.050, 3.450)));
        TestedCut.Found there = (TestedCut.Found) TestedCuts.of(other, List.of(sameWeights)).cuts().stream()
                .filter(cut -> cut.path().equals(path("leg")))
                .findFirst()
                .orElseThrow();
        assertEquals(found(MONDAY).tests(), there.tests());
    }

    @Test
    void ofOneTestNeitherSpreadNorDoubtIsTold() {
        FoundShares one = FoundShares.of(found(MONDAY), Mean.SUMS, new Prior.None());
        assertTrue(one.shares().stream().allMatch(share -> share.straying() instanceof FoundShare.NotTold));
        assertEquals(List.of(), one.moved());
    }

    /** Shares of chump 1.450 / 6.950 and 1.390 / 6.950, t with 1 degree of freedom 12.7062 (Student 1908; any table of t). */
    @Test
    void theRangeOfTheMeanIsStudentsWithOneTestLessThanThereAre() {
        FoundShares two = FoundShares.of(found(MONDAY, TUESDAY), Mean.SHARES, new Prior.None());
        FoundShare.Told chump =
                assertInstanceOf(FoundShare.Told.class, two.shares().get(0).straying());
        double gap = 0.99 * (1.450 - 1.390) / 6.950;
        double ofMean = gap / 2;
        double mean = 0.99 * 1.420 / 6.950;
        assertEquals(ofMean, chump.ofMean(), 1e-12);
        assertEquals(mean - 12.7062 * ofMean, chump.mean95().low(), 1e-6);
        assertEquals(mean + 12.7062 * ofMean, chump.mean95().high(), 1e-6);
    }

    @Test
    void aTestThatLeftAPartOutTellsNothingOfTheCutAndSaysWhichPart() {
        List<PartReading> sheet = new ArrayList<>(leg(1.450, 2.050, 3.450));
        sheet.remove(3);
        TestedCut.Found cut = found(MONDAY, test("tuesday", sheet));
        assertEquals(1, cut.tests().tests().size());
        LeftOut.PartsNotKnown why =
                assertInstanceOf(LeftOut.PartsNotKnown.class, cut.leftOut().get(0));
        assertEquals("tuesday", why.test());
        assertEquals(List.of("shank"), why.parts());
        assertFalse(why.isAll());
    }

    @Test
    void whatTheTrimLeavesFollowsWhereTheCutWasWeighedWhole() {
        List<PartReading> sheet = new ArrayList<>(leg(1.450, 2.050, 3.450));
        sheet.add(whole(0.080, "leg", "topside", "fat"));
        TestedCut.Found topside =
                assertInstanceOf(TestedCut.Found.class, tested(path("leg", "topside"), test("monday", sheet)));
        FoundShares shares = FoundShares.of(topside, Mean.SUMS, new Prior.None());
        assertEquals(0.080 / 2.050, shares.shares().get(0).share(), 1e-12);
        assertEquals(1.970 / 2.050, shares.shares().get(1).share(), 1e-12);
        assertFalse(shares.shares().get(1).part().hasLine());
    }

    @Test
    void aPartOfNothingMakesAnotherWayOfWorking() {
        TestedCut.NotFound cut = assertInstanceOf(
                TestedCut.NotFound.class, tested(path("leg"), MONDAY, test("tuesday", leg(0, 3.000, 3.950))));
        LeftOut.Nothing why =
                assertInstanceOf(LeftOut.Nothing.class, cut.leftOut().get(0));
        assertEquals("chump", why.part());
    }

    @Test
    void aCutOfWhichNothingWasWeighedIsNamed() {
        TestedCut.NotFound topside = assertInstanceOf(TestedCut.NotFound.class, tested(path("leg", "topside"), MONDAY));
        assertTrue(
                assertInstanceOf(LeftOut.PartsNotKnown.class, topside.leftOut().get(0))
                        .isAll());
    }

    /** Weight 3 / (3 + 4) as in row D07 of the maths check values: worked out there by the credibility formula. */
    @Test
    void withAPriorEveryPartIsDrawnTowardsWhatIsStatedByTheSameWeight() {
        TestedCut.Found cut = found(MONDAY, TUESDAY, test("wednesday", leg(1.420, 2.080, 3.450)));
        FoundShares alone = FoundShares.of(cut, Mean.SUMS, new Prior.None());
        FoundShares drawn = FoundShares.of(cut, Mean.SUMS, new Prior.Stated(new TableWorth(4)));
        assertEquals(3.0 / 7, drawn.ownWeight(), 1e-12);
        for (int i = 0; i < 3; i++) {
            double stated = cut.parts().get(i).stated().mean();
            assertEquals(
                    3.0 / 7 * alone.shares().get(i).share() + 4.0 / 7 * stated,
                    drawn.shares().get(i).share(),
                    1e-12);
        }
    }

    @Test
    void withAPriorOneTestHasTheSpreadThatIsStated() {
        FoundShares drawn = FoundShares.of(found(MONDAY), Mean.SUMS, new Prior.Stated(new TableWorth(4)));
        FoundShare.Told chump =
                assertInstanceOf(FoundShare.Told.class, drawn.shares().get(0).straying());
        assertEquals(0.01, chump.betweenCarcasses(), 1e-12);
    }

    @Test
    void aStatedShareOutsideTheRangeOfTheMeanHasMovedUnlessItCountsItself() {
        TestedCut.Found cut = found(
                test("monday", leg(1.700, 1.900, 3.350)),
                test("tuesday", leg(1.705, 1.895, 3.350)),
                test("wednesday", leg(1.695, 1.905, 3.350)));
        FoundShares shares = FoundShares.of(cut, Mean.SUMS, new Prior.None());
        assertEquals(
                List.of("chump", "topside"),
                shares.moved().stream()
                        .map(share -> share.part().name())
                        .filter(name -> !name.equals("shank"))
                        .toList());
        FoundShares drawn = FoundShares.of(cut, Mean.SUMS, new Prior.Stated(new TableWorth(4)));
        assertEquals(List.of(), drawn.moved());
    }

    /** The carcasses differ by less than the display can show: 2 g in 7 kg, a scale in steps of 50 g. */
    @Test
    void whereTheScaleIsTooCoarseHowCarcassesStrayIsNotTold() {
        TestedCut.Found cut = found(coarse("monday", 1.400), coarse("tuesday", 1.402), coarse("wednesday", 1.398));
        for (FoundShare share : FoundShares.of(cut, Mean.SUMS, new Prior.None()).shares()) {
            assertTrue(assertInstanceOf(FoundShare.Told.class, share.straying()).isDrowned(), share.toString());
        }
    }

    private static NamedTest coarse(String name, double chump) {
        Scale scale = Scale.ofDivision("rail", 0.050);
        return test(
                name,
                leg(chump, 2.050, 3.450).stream()
                        .map(part -> new PartReading(
                                part.part(), part.state(), List.of(new Weighing(scale, part.kilograms(), 1))))
                        .toList());
    }

    @Test
    void rangesOfRatiosStayInsideTheWhole() {
        TestedCut.Found cut = found(MONDAY, TUESDAY);
        for (FoundShare share :
                FoundShares.of(cut, Mean.RATIOS, new Prior.None()).shares()) {
            FoundShare.Told told = assertInstanceOf(FoundShare.Told.class, share.straying());
            assertTrue(told.next95().low() > 0 && told.next95().high() < cut.leftByKept(), share.toString());
        }
    }

    @Test
    void aPriorNeedsAStatedShareOfEveryPart() {
        CutTree open = hogget(
                pair("leg", "33.0 ± 0.9", trim("fat", "", "mince"), trim("silverskin", "1.0 ± 0.2", "waste")),
                cut("rest of it", "67.0 ± 0.9"));
        NamedTest monday = new NamedTest(
                "monday",
                CuttingTest.of(
                        yields(open, "21"),
                        List.of(
                                whole(0.3, "leg", "fat"),
                                whole(0.1, "leg", "silverskin"),
                                reading(6.6, State.TRIMMED, "leg"))));
        TestedCut.Found leg = (TestedCut.Found) TestedCuts.of(open, List.of(monday)).cuts().stream()
                .filter(cut -> cut.path().equals(path("leg")))
                .findFirst()
                .orElseThrow();
        assertFalse(FoundShares.canDrawTowards(leg));
        assertThrows(
                IllegalArgumentException.class,
                () -> FoundShares.of(leg, Mean.SUMS, new Prior.Stated(new TableWorth(4))));
    }

    /** One test wrote down that nothing was lost at the saw, the other did not weigh it: it is kept, and is no part of nothing. */
    @Test
    void aLossOfNothingOnOneSheetLosesNoCut() {
        List<PartReading> sheet = new ArrayList<>(leg(1.450, 2.050, 3.500));
        sheet.add(whole(0, "leg", "saw"));
        assertEquals(1, found(MONDAY, test("wednesday", sheet)).kept().size());
    }

    /** One part and two losses, of which each sheet weighed another. */
    @Test
    void aCutOfWhichOnlyOnePartIsLeftIsNotFound() {
        CutTree tree = hogget(
                pair(
                        "leg",
                        "33.0 ± 0.9",
                        cut("meat", "98.0 ± 0.3"),
                        loss("saw", "1.0 ± 0.2"),
                        loss("drip", "1.0 ± 0.2")),
                cut("rest of it", "67.0 ± 0.9"));
        NamedTest one = new NamedTest(
                "one",
                CuttingTest.of(
                        yields(tree, "21"),
                        List.of(whole(7, "leg"), whole(6.86, "leg", "meat"), whole(0.07, "leg", "saw"))));
        NamedTest other = new NamedTest(
                "other",
                CuttingTest.of(
                        yields(tree, "21"),
                        List.of(whole(7, "leg"), whole(6.86, "leg", "meat"), whole(0.07, "leg", "drip"))));
        assertTrue(TestedCuts.of(tree, List.of(one, other)).cuts().stream()
                .allMatch(cut -> cut instanceof TestedCut.NotFound));
    }
}
