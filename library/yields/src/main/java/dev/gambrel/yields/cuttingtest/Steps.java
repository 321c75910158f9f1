package dev.gambrel.yields.cuttingtest;

import dev.gambrel.yields.table.LargestRemainder;
import java.util.Arrays;
import java.util.List;

/** Figures in whole steps of the last place shown. */
final class Steps {
    /** Nearer to the middle between two steps than this is taken for the middle, so that rounding in the last bits moves nothing. */
    private static final double IN_THE_MIDDLE = 1e-6;

    private final double perUnit;

    Steps(int places) {
        this.perUnit = Math.pow(10, places);
    }

    /** The nearest step, the even one of two. */
    long nearest(double figure) {
        return (long) Math.rint(Math.rint(figure * perUnit / IN_THE_MIDDLE) * IN_THE_MIDDLE);
    }

    List<Long> each(List<Double> figures) {
        return figures.stream().map(this::nearest).toList();
    }

    /**
     * Steps that add up to a whole, which is the sum rounded up or down; each on its own where it is not, as where figures are so large that
     * doubles do not hold a step of them.
     */
    List<Long> parts(List<Double> figures, long whole) {
        double[] exact =
                figures.stream().mapToDouble(figure -> figure * perUnit).toArray();
        return Math.abs(Arrays.stream(exact).sum() - whole) <= 1
                ? Arrays.stream(LargestRemainder.apportion(exact, whole))
                        .boxed()
                        .toList()
                : each(figures);
    }
}
