package dev.gambrel.yields.batch;

import java.util.stream.IntStream;

/**
 * A cut whose ways depend on a grade of the carcass.
 *
 * @param cut its line
 * @param first the line of the first way
 * @param grade which grade of the specification
 * @param splits how much goes each way where the grade is not known, then for each of its values; NaN where that cannot be told
 */
record GradedCut(int cut, int first, int grade, double[][] splits) implements Decision {
    @Override
    public int[] differing() {
        return IntStream.range(first, first + splits[0].length).toArray();
    }

    @Override
    public void decide(Block block) {
        for (int carcass = 0; carcass < block.size(); carcass++) {
            block.turnTo(carcass);
            double[] here = splits[place(block.grade(grade))];
            for (int i = 0; i < here.length; i++) {
                block.sure()[carcass] &= !Double.isNaN(here[i]);
                block.split(first + i, here[i], here[i]);
            }
        }
    }

    private int place(int value) {
        if (value < Carcasses.NOT_KNOWN || value + 2 > splits.length) {
            throw new IllegalArgumentException("a grade has no value " + value);
        }
        return value + 1;
    }
}
