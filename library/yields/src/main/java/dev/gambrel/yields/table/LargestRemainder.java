package dev.gambrel.yields.table;

import java.util.Arrays;
import java.util.Comparator;

/**
 * Rounds the parts of a whole so that they add up to the whole as it is printed.
 *
 * <p>Each part is first rounded down; the steps that are then missing go one each to the parts with the largest remainder,
 * the earlier part first where two are equal (the method of A. Hamilton, in M. L. Balinski and H. P. Young, Fair
 * Representation, 1982). Each part is within one step of its exact value. If the whole was itself rounded up or down
 * from the sum of the parts, its parts can be parted again in the same way, and so down a whole tree.
 */
public final class LargestRemainder {
    /** How near to a whole step counts as on it, so that rounding in the last bits moves nothing. */
    private static final double ON_A_STEP = 1e-9;

    private LargestRemainder() {}

    /**
     * Apportions a whole.
     *
     * @param exact the parts in steps of the last place printed, each finite
     * @param total the whole in the same steps: the sum of the parts rounded up or down
     * @return the parts in whole steps; they add up to {@code total}
     * @throws IllegalArgumentException if {@code total} is further from the sum of the parts than one step for each
     */
    public static long[] apportion(double[] exact, long total) {
        long[] steps = new long[exact.length];
        double[] remainder = new double[exact.length];
        long missing = total;
        for (int i = 0; i < exact.length; i++) {
            steps[i] = (long) Math.floor(exact[i] + ON_A_STEP);
            remainder[i] = exact[i] - steps[i];
            missing -= steps[i];
        }
        if (Math.abs(missing) > exact.length) {
            throw new IllegalArgumentException("the parts do not add up to " + total);
        }
        Integer[] order = order(remainder);
        for (int i = 0; i < missing; i++) {
            steps[order[i]]++;
        }
        for (int i = 0; i < -missing; i++) {
            steps[order[order.length - 1 - i]]--;
        }
        return steps;
    }

    private static Integer[] order(double[] remainder) {
        Integer[] order = new Integer[remainder.length];
        Arrays.setAll(order, i -> i);
        Arrays.sort(order, Comparator.comparingDouble((Integer i) -> -snapped(remainder[i])));
        return order;
    }

    /** Remainders that differ only in the last bits are ties. */
    private static double snapped(double remainder) {
        return Math.rint(remainder / ON_A_STEP) * ON_A_STEP;
    }
}
