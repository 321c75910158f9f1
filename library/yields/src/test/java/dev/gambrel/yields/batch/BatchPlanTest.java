package dev.gambrel.yields.batch;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.sun.management.ThreadMXBean;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.Sheet;
import dev.gambrel.yields.YieldCode;
import dev.gambrel.yields.figure.Spread;
import dev.gambrel.yields.working.Working;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

class BatchPlanTest {
    private static final CutTree HOGGET =
            Sheet.hogget(Sheet.pair("leg", "33 ± 0.9", Sheet.trim("fat", "4 ± 1", "waste")), Sheet.rest("mince"));

    private static BatchPlan plan(CutTree tree) {
        return BatchPlan.of(tree, Working.AS_WRITTEN, Basis.COLD).orElseThrow();
    }

    @Test
    void three_carcasses_give_three_times_what_one_gives() {
        BatchPlan plan = plan(HOGGET);
        BatchSums sums = plan.sums();
        plan.worker().add(Carcasses.weighed(22, 22, 22), 0, 3, new byte[3], sums);
        assertEquals(3 * 22 * 0.33, sums.line(1).sum(), 1e-12);
        assertEquals(0, ((Spread.Stated) sums.line(1).between()).standardDeviation(), 1e-6);
    }

    @Test
    void carcasses_vary_independently_so_four_of_them_stray_twice_as_far_as_one() {
        BatchPlan plan = plan(HOGGET);
        BatchSums sums = plan.sums();
        plan.worker().add(Carcasses.weighed(22, 22, 22, 22), 0, 4, new byte[4], sums);
        double one = Sheet.sd(
                Sheet.row(Sheet.yields(HOGGET, "22"), "leg").allPieces().orElseThrow());
        assertEquals(2 * one, ((Spread.Stated) sums.line(1).expected()).standardDeviation(), 1e-12);
    }

    @Test
    void how_far_carcasses_lie_apart_is_what_the_scale_showed() {
        BatchPlan plan = plan(HOGGET);
        BatchSums sums = plan.sums();
        plan.worker().add(Carcasses.weighed(21, 23), 0, 2, new byte[2], sums);
        assertEquals(Math.sqrt(2), ((Spread.Stated) sums.line(0).between()).standardDeviation(), 1e-12);
        assertEquals(0.33 * Math.sqrt(2), ((Spread.Stated) sums.line(1).between()).standardDeviation(), 1e-12);
    }

    @Test
    void one_carcass_does_not_say_how_far_others_lie_apart() {
        BatchPlan plan = plan(HOGGET);
        BatchSums sums = plan.sums();
        plan.worker().add(Carcasses.weighed(21), 0, 1, new byte[1], sums);
        assertEquals(Spread.NOT_STATED, sums.line(0).between());
    }

    @Test
    void a_carcass_of_nothing_is_refused_and_the_others_are_not() {
        BatchPlan plan = plan(HOGGET);
        Carcasses carcasses = Carcasses.weighed(22, 0, -3, 200_000, Double.NaN, 23);
        byte[] notes = new byte[6];
        BatchSums sums = plan.sums();
        plan.worker().add(carcasses, 0, 6, notes, sums);
        assertArrayEquals(new byte[] {0, 1, 1, 1, 1, 0}, notes);
        assertEquals(2, sums.carcasses());
        assertEquals(45, sums.line(0).sum(), 1e-12);
        assertEquals(
                YieldCode.CARCASS_WEIGHT_NOT_POSITIVE,
                plan.alone(carcasses, 1, Unit.KILOGRAM).diagnostics().get(0).code());
        assertEquals(
                YieldCode.WEIGHT_OUT_OF_REACH,
                plan.alone(carcasses, 3, Unit.KILOGRAM).diagnostics().get(0).code());
    }

    @Test
    void a_carcass_outside_the_band_is_noted_and_counted() {
        BatchPlan plan = plan(HOGGET);
        byte[] notes = new byte[4];
        BatchSums sums = plan.sums();
        plan.worker().add(Carcasses.weighed(19.99, 20, 24, 24.01), 0, 4, notes, sums);
        assertArrayEquals(new byte[] {2, 0, 0, 2}, notes);
        assertEquals(4, sums.carcasses());
    }

    @Test
    void a_carcass_refused_beforehand_is_passed_over() {
        BatchPlan plan = plan(HOGGET);
        BatchSums sums = plan.sums();
        plan.worker().add(Carcasses.weighed(22, 23), 0, 2, new byte[] {BatchWorker.REFUSED, 0}, sums);
        assertEquals(23, sums.line(0).sum(), 0);
    }

    @Test
    void a_refused_carcass_has_no_weights() {
        BatchPlan plan = plan(HOGGET);
        double[] weights = new double[plan.size()];
        plan.worker().weights(Carcasses.weighed(0), 0, 1, new byte[1], weights, 0);
        assertTrue(Arrays.stream(weights).allMatch(Double::isNaN));
    }

    @Test
    void weights_on_another_basis_need_to_be_told_what_is_lost() {
        assertEquals(
                YieldCode.BASIS_DIFFERS,
                BatchPlan.of(HOGGET, Working.AS_WRITTEN, Basis.LIVE)
                        .diagnostics()
                        .get(0)
                        .code());
    }

    @Test
    void no_object_is_made_for_a_carcass() {
        BatchPlan plan = plan(HOGGET);
        int n = 2_000;
        Carcasses carcasses = Carcasses.weighed(
                IntStream.range(0, n).mapToDouble(i -> 15 + 0.005 * i).toArray());
        byte[] notes = new byte[n];
        double[] weights = new double[n * plan.size()];
        double[] totals = new double[n * plan.totals().size()];
        BatchSums sums = plan.sums();
        BatchWorker worker = plan.worker();
        long few = allocated(() -> {
            worker.add(carcasses, 0, n, notes, sums);
            worker.weights(carcasses, 0, n, notes, weights, 0);
            worker.totals(carcasses, 0, n, notes, totals, 0);
        });
        assertTrue(few < n, () -> few + " bytes for " + n + " carcasses");
        assertFalse(Double.isNaN(weights[weights.length - 1]));
    }

    private static long allocated(Runnable work) {
        ThreadMXBean threads = (ThreadMXBean) ManagementFactory.getThreadMXBean();
        work.run();
        long before = threads.getCurrentThreadAllocatedBytes();
        work.run();
        return threads.getCurrentThreadAllocatedBytes() - before;
    }

    @Test
    void columns_are_as_long_as_there_are_carcasses() {
        assertThrows(
                IllegalArgumentException.class,
                () -> new Carcasses(new double[2], new int[0][], new double[][] {new double[3]}));
        assertThrows(
                IllegalArgumentException.class,
                () -> new Carcasses(new double[2], new int[][] {new int[1]}, new double[0][]));
    }
}
