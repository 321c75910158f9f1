package dev.gambrel.yields.batch;

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
    public boolean decide(Row row) {
        double sum = stated;
        boolean sure = true;
        for (int i = 0; i < lines.length; i++) {
            double share = row.estimated(equations[i]) / 100;
            double most = 100 * Math.sqrt(share * (1 - share)) * (1 - ROUNDING);
            sure &= share >= SMALL && !(deviations[i] > most);
            row.share(lines[i], share);
            sum += share;
        }
        row.share(closing, 1 - sum);
        return sure && sum <= 1 - ROUNDING;
    }
}
