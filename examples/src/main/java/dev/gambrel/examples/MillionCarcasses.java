package dev.gambrel.examples;

import dev.gambrel.tree.Basis;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.batch.BatchFigure;
import dev.gambrel.yields.batch.BatchPlan;
import dev.gambrel.yields.batch.BatchSums;
import dev.gambrel.yields.batch.BatchWorker;
import dev.gambrel.yields.batch.Carcasses;
import dev.gambrel.yields.working.Working;
import java.util.Arrays;
import java.util.Locale;
import java.util.stream.IntStream;

/** What a million carcasses give, on as many threads as there are: the sums are the same on any number of them. */
public final class MillionCarcasses {
    private static final int TOGETHER = 1_000 * BatchWorker.BLOCK;

    private MillionCarcasses() {}

    /**
     * Prints how much the carcasses give under each head.
     *
     * @param args none
     */
    public static void main(String[] args) {
        double[] kilograms = new double[1_000_000];
        Arrays.setAll(kilograms, i -> 20 + i % 40 / 10.0);
        System.out.print(report(TreeWithoutTheLanguage.tree(), kilograms));
    }

    static String report(CutTree tree, double[] kilograms) {
        BatchPlan plan = BatchPlan.of(tree, Working.AS_WRITTEN, Basis.COLD).orElseThrow();
        Carcasses carcasses = Carcasses.weighed(kilograms);
        byte[] notes = new byte[kilograms.length];
        BatchSums all = plan.sums();
        IntStream.rangeClosed(0, (kilograms.length - 1) / TOGETHER)
                .parallel()
                .map(part -> part * TOGETHER)
                .mapToObj(from -> sums(plan, carcasses, from, notes))
                .forEachOrdered(all::add);
        StringBuilder text = new StringBuilder(all.carcasses() + " carcasses\n");
        for (int t = 0; t < plan.totals().size(); t++) {
            BatchFigure figure = all.total(t);
            text.append(String.format(
                    Locale.ROOT, "%s: %.1f kg\n", plan.totals().get(t).name(), figure.sum()));
        }
        return text.toString();
    }

    private static BatchSums sums(BatchPlan plan, Carcasses carcasses, int from, byte[] notes) {
        BatchSums sums = plan.sums();
        plan.worker().add(carcasses, from, Math.min(notes.length, from + TOGETHER), notes, sums);
        return sums;
    }
}
