package dev.gambrel.yields;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.batch.BatchPlan;
import dev.gambrel.yields.batch.BatchSums;
import dev.gambrel.yields.batch.BatchWorker;
import dev.gambrel.yields.batch.Carcasses;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.JointEstimate;
import dev.gambrel.yields.figure.Spread;
import dev.gambrel.yields.portions.NumberOfPortions;
import dev.gambrel.yields.portions.Portioning;
import dev.gambrel.yields.working.Working;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.function.Executable;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What makes no sense is refused where it is given, and never becomes a wrong figure. */
class RefusedFiguresTest {
    private static final CutTree HOGGET = Sheet.hogget(Sheet.pair("leg", "33 ± 0.9"), Sheet.rest("mince"));
    private static final Estimate PIECE = new Estimate(2, new Spread.Stated(0.1));

    private static void refused(Executable figure) {
        assertThrows(IllegalArgumentException.class, figure);
    }

    @Test
    void nothing_strays_by_less_than_nothing() {
        refused(() -> new Spread.Stated(-1));
        refused(() -> new Spread.Stated(Double.NaN));
        refused(() -> Spread.ofVariance(-1));
        assertEquals(Spread.NOT_STATED, Spread.ofVariance(Double.NaN));
    }

    @Test
    void a_length_is_not_the_weight_of_a_carcass() {
        Expected length = new Expected.Mean(Quantity.of("24", Unit.MILLIMETRE));
        refused(() -> CarcassLot.expected(3, length, Basis.COLD));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void a_piece_and_a_portion_have_a_size(double size) {
        refused(() -> new Portioning(Estimate.exactly(size), 0.18));
        refused(() -> new Portioning(PIECE, size));
        refused(() -> new Portioning(PIECE, 0.18, size, 0, 0.18));
        refused(() -> new Portioning(PIECE, 0.18, 0, size, 0.18));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, 0, 1, 95, Double.NaN})
    void a_promise_is_neither_certain_nor_impossible(double certainty) {
        Portioning steaks = new Portioning(PIECE, 0.18);
        NumberOfPortions listed = steaks.number().orElseThrow();
        NumberOfPortions crumbs = new Portioning(PIECE, 1e-6).number().orElseThrow();
        refused(() -> steaks.promised(certainty));
        refused(() -> listed.promised(certainty));
        refused(() -> crumbs.promised(certainty));
    }

    @Test
    void each_figure_has_its_own_weight_in_a_sum() {
        JointEstimate two = JointEstimate.of(new double[] {1, 2}, new double[][] {{4, 1}, {1, 9}});
        JointEstimate one = JointEstimate.of(PIECE);
        refused(() -> two.combination(1));
        refused(() -> two.combination(1, 1, 1));
        refused(() -> two.propagated(3, 1));
        refused(() -> two.propagated(new double[] {3}, new double[][] {{1, 1}, {1, 0}}));
        refused(() -> two.alsoVarying(one));
        refused(() -> one.alsoVarying(two));
    }

    /** A plan of the same tree is another one too: its sums are of carcasses worked in its own way. */
    @Test
    void sums_of_one_plan_say_nothing_of_another() {
        BatchPlan hogget = BatchPlan.of(HOGGET, Working.AS_WRITTEN, Basis.COLD).orElseThrow();
        BatchSums other = BatchPlan.of(HOGGET, Working.AS_WRITTEN, Basis.COLD)
                .orElseThrow()
                .sums();
        BatchWorker worker = hogget.worker();
        BatchSums sums = hogget.sums();
        refused(() -> sums.add(other));
        refused(() -> worker.add(Carcasses.weighed(22), 0, 1, new byte[1], other));
    }

    /** 22 kg and a carcass too heavy to be one: whoever asks for a third finds nothing noted of the first two. */
    @Test
    void carcasses_that_are_not_there_are_told_before_anything_is_written() {
        BatchPlan plan = BatchPlan.of(HOGGET, Working.AS_WRITTEN, Basis.COLD).orElseThrow();
        BatchWorker worker = plan.worker();
        Carcasses two = Carcasses.weighed(22, 1e6);
        byte[] notes = new byte[3];
        double[] weights = new double[2 * plan.size()];
        assertThrows(IndexOutOfBoundsException.class, () -> worker.add(two, 0, 3, notes, plan.sums()));
        assertThrows(IndexOutOfBoundsException.class, () -> worker.add(two, 2, 1, notes, plan.sums()));
        assertThrows(IndexOutOfBoundsException.class, () -> worker.add(two, 0, 2, new byte[1], plan.sums()));
        assertThrows(IndexOutOfBoundsException.class, () -> worker.weights(two, 0, 2, notes, weights, 1));
        assertThrows(IndexOutOfBoundsException.class, () -> worker.totals(two, 0, 2, notes, new double[1], 0));
        assertArrayEquals(new byte[3], notes);
        assertArrayEquals(new double[2 * plan.size()], weights);
    }
}
