package dev.gambrel.yields.reconciliation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.yields.figure.Estimate;
import java.util.Arrays;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;

/** What holds of every sheet whatever was weighed. */
class ReconciliationLaws {
    @Property(tries = 300)
    void thePassesAgreeWithADenseSolutionByQr(@ForAll long seed) {
        Sheets sheet = Sheets.drawn(seed, 40);
        DensePeer dense = new DensePeer(sheet.tree, sheet.reading, sheet.variance);
        Reconciliation ours = sheet.reconciled();
        double most = Arrays.stream(sheet.truth).max().orElseThrow();
        for (int v = 0; v < sheet.tree.size(); v++) {
            assertEquals(dense.weight[v], weight(ours, v), 1e-12 * most);
            assertEquals(1, variance(ours, v) / dense.variance[v], 1e-9);
        }
        assertEquals(dense.chiSquare, ours.test().chiSquare(), 1e-9 * (1 + dense.chiSquare));
    }

    @Property(tries = 300)
    void everyCutWeighsWhatItsPartsWeigh(@ForAll long seed) {
        Sheets sheet = Sheets.drawn(seed, 400, 0.9, 0.7);
        Reconciliation ours = sheet.reconciled();
        for (int v = 0; v < sheet.tree.size(); v++) {
            boolean allKnown = !sheet.tree.isEnd(v)
                    && sheet.tree.parts(v).allMatch(part -> ours.weight(part) instanceof Reconciled.Weight);
            if (allKnown) {
                double parts = sheet.tree
                        .parts(v)
                        .mapToDouble(part -> weight(ours, part))
                        .sum();
                assertEquals(parts, weight(ours, v), 1e-12 * parts);
            }
        }
    }

    @Property(tries = 200)
    void readingsWithoutErrorAreReturnedUnchanged(@ForAll long seed) {
        Sheets sheet = Sheets.drawn(seed, 200).withoutError();
        Reconciliation ours = sheet.reconciled();
        assertEquals(0, ours.test().chiSquare());
        for (int v = 0; v < sheet.tree.size(); v++) {
            assertEquals(sheet.truth[v], weight(ours, v));
        }
    }

    @Property(tries = 200)
    void aSheetInBalanceStaysAsItIs(@ForAll long seed) {
        Sheets sheet = Sheets.drawn(seed, 200);
        Reconciliation once = sheet.reconciled();
        double[] balanced = new double[sheet.tree.size()];
        Arrays.setAll(balanced, v -> Double.isNaN(sheet.reading[v]) ? Double.NaN : weight(once, v));
        Reconciliation twice = Reconciliation.of(sheet.tree, Readings.of(balanced, sheet.variance));
        for (int v = 0; v < sheet.tree.size(); v++) {
            assertEquals(weight(once, v), weight(twice, v), 1e-12 * sheet.truth[0]);
        }
    }

    @Property(tries = 200)
    void weightsMayBeInAnyUnit(@ForAll long seed) {
        Sheets sheet = Sheets.drawn(seed, 200, 0.8, 0.6);
        double[] grams = Arrays.stream(sheet.reading).map(y -> 1000 * y).toArray();
        double[] squares = Arrays.stream(sheet.variance).map(s -> 1e6 * s).toArray();
        Reconciliation kilograms = sheet.reconciled();
        Reconciliation inGrams = Reconciliation.of(sheet.tree, Readings.of(grams, squares));
        assertEquals(kilograms.test().degreesOfFreedom(), inGrams.test().degreesOfFreedom());
        assertEquals(
                kilograms.test().chiSquare(),
                inGrams.test().chiSquare(),
                1e-7 * (1 + kilograms.test().chiSquare()));
        for (int v = 0; v < sheet.tree.size(); v++) {
            if (kilograms.weight(v) instanceof Reconciled.Weight) {
                assertEquals(1000 * weight(kilograms, v), weight(inGrams, v), 1e-9 * sheet.truth[0]);
            }
        }
    }

    @Property(tries = 200)
    void whatAnExactScaleSaysIsKept(@ForAll long seed) {
        Sheets sheet = Sheets.drawn(seed, 100);
        int exact = Math.floorMod(seed, sheet.tree.size());
        Reconciliation ours = Reconciliation.of(sheet.tree, sheet.readings().with(exact, sheet.truth[exact], 0));
        assertEquals(sheet.truth[exact], weight(ours, exact));
        assertEquals(0, variance(ours, exact));
        assertTrue(Double.isFinite(ours.test().chiSquare()));
    }

    /** All ends on a scale that does not err: each cut weighs what they say, whatever its own reading. */
    @Property(tries = 200)
    void allThatAnExactScaleSaysIsKept(@ForAll long seed) {
        Sheets sheet = Sheets.drawn(seed, 100);
        double[] variance = sheet.variance.clone();
        Arrays.setAll(variance, v -> sheet.tree.isEnd(v) ? 0 : sheet.variance[v]);
        Reconciliation ours = Reconciliation.of(sheet.tree, Readings.of(sheet.reading, variance));
        for (int v = 0; v < sheet.tree.size(); v++) {
            if (sheet.tree.isEnd(v)) {
                assertEquals(sheet.reading[v], weight(ours, v));
            }
            assertEquals(0, variance(ours, v));
        }
    }

    /** C. M. Crowe's identity, 1992: what a reading is blamed for is what the sheet gains without it. */
    @Property(tries = 100)
    void withoutAReadingTheChiSquareFallsByTheSquareOfItsResidual(@ForAll long seed) {
        Sheets sheet = Sheets.drawn(seed, 40, 0.9, 0.7);
        Reconciliation ours = sheet.reconciled();
        double all = ours.test().chiSquare();
        for (int v : sheet.readings().weighed().toArray()) {
            GlobalTest without =
                    Reconciliation.of(sheet.tree, sheet.readings().without(v)).test();
            double explained = ours.reading(v) instanceof ReadingTest.Checked checked ? checked.explained() : 0;
            assertEquals(all - explained, without.chiSquare(), 1e-9 * (1 + all));
            int checks = ours.reading(v) instanceof ReadingTest.Checked ? 1 : 0;
            assertEquals(ours.test().degreesOfFreedom() - checks, without.degreesOfFreedom());
        }
    }

    @Property(tries = 200)
    void theResidualOfAReadingIsItsCorrectionOverWhatThatMayBe(@ForAll long seed) {
        Sheets sheet = Sheets.drawn(seed, 60, 0.9, 0.7);
        Reconciliation ours = sheet.reconciled();
        for (int v : sheet.readings().weighed().toArray()) {
            double freedom = sheet.variance[v] - variance(ours, v);
            if (ours.reading(v) instanceof ReadingTest.Checked checked && freedom > 1e-6 * sheet.variance[v]) {
                assertEquals(
                        (sheet.reading[v] - weight(ours, v)) / Math.sqrt(freedom),
                        checked.z(),
                        1e-6 * (1 + Math.abs(checked.z())));
            } else if (ours.reading(v) instanceof ReadingTest.NotChecked) {
                assertEquals(sheet.variance[v], variance(ours, v));
                assertEquals(sheet.reading[v], weight(ours, v));
            }
        }
    }

    @Property(tries = 200)
    void theChiSquareIsMadeUpOfOneIndependentDifferenceForEachCut(@ForAll long seed) {
        Reconciliation ours = Sheets.drawn(seed, 200, 0.9, 0.7).reconciled();
        double squares =
                ours.balances().stream().mapToDouble(b -> b.z() * b.z()).sum();
        assertEquals(squares, ours.test().chiSquare(), 1e-12 * (1 + squares));
        assertEquals(ours.balances().size(), ours.test().degreesOfFreedom());
    }

    /** Nodes of one tree in another order, so that sisters change places: nothing but the last digit may change. */
    @Property(tries = 200)
    void theOrderOfRowsDoesNotMatter(@ForAll long seed) {
        Sheets sheet = Sheets.drawn(seed, 100, 0.8, 0.6);
        int n = sheet.tree.size();
        Random random = new Random(seed);
        int[] place = placesInAnotherOrder(sheet.tree, random);
        int[] above = new int[n];
        double[] reading = new double[n];
        double[] variance = new double[n];
        for (int v = 0; v < n; v++) {
            above[place[v]] = v == 0 ? -1 : place[sheet.tree.above(v)];
            reading[place[v]] = sheet.reading[v];
            variance[place[v]] = sheet.variance[v];
        }
        Reconciliation ours = sheet.reconciled();
        Reconciliation other = Reconciliation.of(MassTree.of(above), Readings.of(reading, variance));
        for (int v = 0; v < n; v++) {
            assertEquals(ours.weight(v).getClass(), other.weight(place[v]).getClass());
            if (ours.weight(v) instanceof Reconciled.Weight) {
                assertEquals(weight(ours, v), weight(other, place[v]), 1e-12 * sheet.truth[0]);
            }
        }
    }

    private static int[] placesInAnotherOrder(MassTree tree, Random random) {
        double[] key = new double[tree.size()];
        for (int v = 1; v < key.length; v++) {
            key[v] = key[tree.above(v)] + 1e-6 + random.nextDouble();
        }
        Integer[] order = new Integer[key.length];
        Arrays.setAll(order, v -> v);
        Arrays.sort(order, (a, b) -> Double.compare(key[a], key[b]));
        int[] place = new int[key.length];
        for (int i = 0; i < order.length; i++) {
            place[order[i]] = i;
        }
        return place;
    }

    /** Other weights and other scales of the same nodes: what is known and what is checked stays. */
    @Property(tries = 200)
    void whatIsKnownIsKnownWhateverTheFigures(@ForAll long seed) {
        Sheets sheet = Sheets.drawn(seed, 60, 0.6, 0.5);
        Reconciliation ours = sheet.reconciled();
        double[] one =
                Arrays.stream(sheet.reading).map(y -> Double.isNaN(y) ? y : 1).toArray();
        double[] tiny = Arrays.stream(sheet.variance)
                .map(s -> Double.isNaN(s) ? s : 1e-18)
                .toArray();
        Reconciliation other = Reconciliation.of(sheet.tree, Readings.of(one, tiny));
        for (int v = 0; v < sheet.tree.size(); v++) {
            assertEquals(ours.weight(v).getClass(), other.weight(v).getClass());
            assertEquals(ours.reading(v).getClass(), other.reading(v).getClass());
        }
    }

    @Property(tries = 100)
    void aPartVariesTogetherWithWhatItIsCutFrom(@ForAll long seed) {
        Sheets sheet = Sheets.drawn(seed, 30);
        Reconciliation ours = sheet.reconciled();
        for (int v = 1; v < sheet.tree.size(); v++) {
            int cut = sheet.tree.above(v);
            int[] sisters = sheet.tree.parts(cut).toArray();
            double all = Arrays.stream(sisters)
                    .mapToDouble(s -> ours.covarianceWithAbove(s).orElseThrow())
                    .sum();
            assertEquals(1, all / variance(ours, cut), 1e-9);
        }
    }

    /** Weights in balance are linear in the readings: each adds the square of what a unit of it moves the sum, times its variance. */
    @Property(tries = 200)
    void aSumOfWeightsVariesAsItsReadingsMakeIt(@ForAll long seed) {
        Sheets sheet = Sheets.drawn(seed, 40, 0.9, 0.7);
        Reconciliation ours = sheet.reconciled();
        double[] coefficient = new Random(seed)
                .doubles(sheet.tree.size(), -2, 20)
                .map(c -> c < 0 ? 0 : c)
                .toArray();
        Arrays.setAll(coefficient, v -> ours.weight(v) instanceof Reconciled.Weight ? coefficient[v] : 0);
        double variance = 0;
        double mean = 0;
        for (int moved : sheet.readings().weighed().toArray()) {
            double[] unit = new double[sheet.tree.size()];
            Arrays.setAll(unit, v -> Double.isNaN(sheet.reading[v]) ? Double.NaN : v == moved ? 1 : 0);
            double sum = sum(Reconciliation.of(sheet.tree, Readings.of(unit, sheet.variance)), coefficient);
            variance += sum * sum * sheet.variance[moved];
            mean += sum * sheet.reading[moved];
        }
        Estimate figure = ours.figure(v -> coefficient[v]);
        assertEquals(mean, figure.mean(), 1e-9 * (1 + Math.abs(mean)));
        assertEquals(variance, figure.spread().variance(), 1e-9 * variance);
    }

    @Property(tries = 100)
    void theSumOfOneWeightIsThatWeight(@ForAll long seed) {
        Sheets sheet = Sheets.drawn(seed, 60, 0.9, 0.7);
        Reconciliation ours = sheet.reconciled();
        for (int one = 0; one < sheet.tree.size(); one++) {
            if (ours.weight(one) instanceof Reconciled.Weight) {
                int only = one;
                Estimate figure = ours.figure(v -> v == only ? 1 : 0);
                assertEquals(weight(ours, one), figure.mean());
                assertEquals(variance(ours, one), figure.spread().variance(), 1e-9 * variance(ours, one));
            }
        }
    }

    private static double sum(Reconciliation sheet, double[] coefficient) {
        double sum = 0;
        for (int v = 0; v < coefficient.length; v++) {
            sum += coefficient[v] == 0 ? 0 : coefficient[v] * weight(sheet, v);
        }
        return sum;
    }

    static double weight(Reconciliation sheet, int node) {
        return ((Reconciled.Weight) sheet.weight(node)).estimate().mean();
    }

    static double variance(Reconciliation sheet, int node) {
        return ((Reconciled.Weight) sheet.weight(node)).estimate().spread().variance();
    }
}
