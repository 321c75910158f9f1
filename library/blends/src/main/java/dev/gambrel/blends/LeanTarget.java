package dev.gambrel.blends;

import dev.gambrel.tree.term.Judged;

/**
 * How lean a blend is to be.
 *
 * @param judged how lean is found, as for the tubs
 * @param low the least per cent lean that is taken; 0 where anything is fat enough
 * @param high the most per cent lean that is taken; 100 where nothing is too lean
 */
public record LeanTarget(Judged judged, double low, double high) {
    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if they are not in order from 0 to 100, or nobody says how lean is judged
     */
    public LeanTarget {
        if (!(low >= 0 && low <= high && high <= 100)) {
            throw new IllegalArgumentException("lean from " + low + " % to " + high + " % is no target");
        }
        if (judged == Judged.NOT_STATED) {
            throw new IllegalArgumentException("a target says whether its lean is visual or chemical");
        }
    }

    /**
     * One figure, no leaner and no fatter.
     *
     * @param percent per cent lean
     * @param judged how it is found
     * @return the target
     */
    public static LeanTarget exactly(double percent, Judged judged) {
        return new LeanTarget(judged, percent, percent);
    }

    /**
     * As lean as that, or leaner.
     *
     * @param percent per cent lean
     * @param judged how it is found
     * @return the target
     */
    public static LeanTarget atLeast(double percent, Judged judged) {
        return new LeanTarget(judged, percent, 100);
    }

    /**
     * The same target with each figure that it states made leaner.
     *
     * @param points by how much, less than 0 for fatter
     * @return the target, within 0 % and 100 %
     */
    LeanTarget leanerBy(double points) {
        double from = low > 0 ? within(low + points) : low;
        double to = high < 100 ? within(high + points) : high;
        return new LeanTarget(judged, from, to);
    }

    private static double within(double percent) {
        return Math.max(0, Math.min(100, percent));
    }

    /**
     * In print.
     *
     * @return for example "exactly 80 % lean, visual" or "80 % to 85 % lean, chemical"
     */
    public String words() {
        String figures = low == high
                ? "exactly " + Words.percent(low)
                : high == 100
                        ? "at least " + Words.percent(low)
                        : low == 0
                                ? "at most " + Words.percent(high)
                                : Words.percent(low) + " to " + Words.percent(high);
        return figures + " lean, " + judged.words();
    }
}
