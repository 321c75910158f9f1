package dev.gambrel.yields.batch;

/**
 * A cut whose ways depend on a grade of the carcass.
 *
 * @param cut its line
 * @param first the line of the first way
 * @param grade which grade of the specification
 * @param splits for each value of the grade, after that for a grade not known, how much goes each way; NaN where that cannot be told
 */
record GradedCut(int cut, int first, int grade, double[][] splits) implements Decision {
    @Override
    public boolean decide(Row row) {
        double[] here = splits[row.grade(grade) + 1];
        boolean sure = true;
        for (int i = 0; i < here.length; i++) {
            sure &= !Double.isNaN(here[i]);
            row.split(first + i, here[i], here[i]);
        }
        return sure;
    }
}
