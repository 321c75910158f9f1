package dev.gambrel.yields.batch;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * A cut with shares that are estimated: one part of it takes what they leave.
 *
 * @param cut its line
 * @param lines the parts whose shares are estimated
 * @param equations which equation gives each
 * @param deviations the standard deviation of each, in per cent; NaN where not stated
 * @param stated what the other shares add up to, as a part of 1
 * @param closing the part that gives way
 */
record EstimatedCut(int cut, int[] lines, int[] equations, double[] deviations, double stated, int closing)
        implements Decision {
    /** Below this share terms may have cancelled, and digits with them. */
    private static final double SMALL = 1e-3;

    private static final double ROUNDING = 1e-9;

    @Override
    public int[] differing() {
        return IntStream.concat(IntStream.of(lines), IntStream.of(closing)).toArray();
    }

    @Override
    public void decide(Block block) {
        int n = block.size();
        double[] left = block.shares(closing);
        Arrays.fill(left, 0, n, 1 - stated);
        for (int e = 0; e < lines.length; e++) {
            take(block.estimated(equations[e]), block.shares(lines[e]), left, n);
            check(block.shares(lines[e]), deviations[e], block.sure(), n);
        }
        for (int i = 0; i < n; i++) {
            block.sure()[i] &= left[i] >= ROUNDING;
        }
    }

    private static void take(double[] percent, double[] share, double[] left, int n) {
        for (int i = 0; i < n; i++) {
            share[i] = percent[i] / 100;
            left[i] -= share[i];
        }
    }

    /** A share strays at most by √(share (1 − share)), the standard deviation of all or nothing. */
    private static void check(double[] share, double deviation, boolean[] sure, int n) {
        double variance = deviation * deviation / (10_000 * (1 - ROUNDING) * (1 - ROUNDING));
        for (int i = 0; i < n; i++) {
            sure[i] &= share[i] >= SMALL && !(variance > share[i] * (1 - share[i]));
        }
    }
}
