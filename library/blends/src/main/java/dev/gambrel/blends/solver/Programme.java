package dev.gambrel.blends.solver;

import java.util.List;

/**
 * A linear programme: the least Σ cost x, where every x is from 0 to its most and every row holds.
 *
 * @param cost what one of each x costs
 * @param most the most of each x; may be infinite
 * @param rows what must hold
 */
public record Programme(List<Double> cost, List<Double> most, List<Row> rows) {
    /**
     * Copies the lists.
     *
     * @throws IllegalArgumentException if they are not of one length
     */
    public Programme {
        cost = List.copyOf(cost);
        most = List.copyOf(most);
        rows = List.copyOf(rows);
        int n = cost.size();
        if (most.size() != n || rows.stream().anyMatch(row -> row.factors().size() != n)) {
            throw new IllegalArgumentException("rows and columns do not fit");
        }
    }

    /**
     * One thing that must hold: low ≤ Σ factor x ≤ high.
     *
     * @param factors one for each x
     * @param low the least; may be minus infinity
     * @param high the most; may be infinity
     */
    public record Row(List<Double> factors, double low, double high) {
        /** Copies the list. */
        public Row {
            factors = List.copyOf(factors);
        }

        /**
         * By how much a plan misses it.
         *
         * @param x a plan
         * @return 0 where it holds
         */
        public double missedBy(List<Double> x) {
            double sum = Programme.sum(factors, x);
            return Math.max(0, Math.max(low - sum, sum - high));
        }
    }

    /**
     * What a plan costs.
     *
     * @param x a plan
     * @return Σ cost x
     */
    public double costOf(List<Double> x) {
        return sum(cost, x);
    }

    private static double sum(List<Double> factors, List<Double> x) {
        double sum = 0;
        for (int i = 0; i < x.size(); i++) {
            sum += factors.get(i) * x.get(i);
        }
        return sum;
    }
}
