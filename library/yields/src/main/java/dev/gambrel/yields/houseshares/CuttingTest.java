package dev.gambrel.yields.houseshares;

import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.JointEstimate;
import java.util.Arrays;
import java.util.List;

/**
 * What the parts of one cut weighed in one cutting test, reconciled so that nothing is missing: the parts are all that there is of
 * the cut, a loss among them.
 *
 * @param name what the test is called, such as the name of its weigh sheet
 * @param weights for each part kilograms, 0 or more, and how far the scale may have been off; the spreads are not stated where
 *     nobody has said
 * @param counts how much the test counts beside others, more than 0: 1, or less for an old one. Only the ratios of these matter
 */
public record CuttingTest(String name, JointEstimate weights, double counts) {
    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if there are fewer than 2 parts, a weight is below 0 or no number, all are 0, or the test
     *     counts nothing
     */
    public CuttingTest {
        double sum = 0;
        for (int i = 0; i < weights.size(); i++) {
            if (!(weights.mean(i) >= 0)) {
                throw new IllegalArgumentException("part " + (i + 1) + " weighs " + weights.mean(i) + " kg");
            }
            sum += weights.mean(i);
        }
        if (weights.size() < 2 || !(sum > 0 && Double.isFinite(sum))) {
            throw new IllegalArgumentException("a test has 2 parts or more that weigh something, not " + weights.size()
                    + " that weigh " + sum + " kg");
        }
        if (!(counts > 0 && Double.isFinite(counts))) {
            throw new IllegalArgumentException("a test counts more than nothing, not " + counts);
        }
    }

    /**
     * A test of which nobody has said how far the scale may have been off.
     *
     * @param name what the test is called
     * @param kilograms of each part
     * @return the test, which counts 1
     * @throws IllegalArgumentException as the constructor
     */
    public static CuttingTest of(String name, double... kilograms) {
        double[][] notStated = new double[kilograms.length][kilograms.length];
        Arrays.stream(notStated).forEach(row -> Arrays.fill(row, Double.NaN));
        return new CuttingTest(name, JointEstimate.of(kilograms, notStated), 1);
    }

    /**
     * A test whose parts were weighed apart, each with an error of its own.
     *
     * @param name what the test is called
     * @param kilograms of each part, and how far the scale may have been off
     * @return the test, which counts 1
     * @throws IllegalArgumentException as the constructor
     */
    public static CuttingTest weighed(String name, List<Estimate> kilograms) {
        double[][] apart = new double[kilograms.size()][kilograms.size()];
        for (int i = 0; i < apart.length; i++) {
            apart[i][i] = kilograms.get(i).spread().variance();
        }
        double[] means = kilograms.stream().mapToDouble(Estimate::mean).toArray();
        return new CuttingTest(name, JointEstimate.of(means, apart), 1);
    }

    /**
     * The same test, counting otherwise.
     *
     * @param factor how much it counts, more than 0
     * @return the test
     * @throws IllegalArgumentException if it counts nothing
     */
    public CuttingTest counting(double factor) {
        return new CuttingTest(name, weights, factor);
    }

    /**
     * What the parts weigh together.
     *
     * @return kilograms, more than 0
     */
    public double kilograms() {
        double sum = 0;
        for (int i = 0; i < weights.size(); i++) {
            sum += weights.mean(i);
        }
        return sum;
    }

    /**
     * The share of a part, with the error of the weighing to the first order.
     *
     * @param part its index, from 0
     * @return a part of 1; the spread is not stated where that of a weight is not
     */
    public Estimate share(int part) {
        double whole = kilograms();
        double share = weights.mean(part) / whole;
        double[] gradient = new double[weights.size()];
        Arrays.setAll(gradient, k -> ((k == part ? 1 : 0) - share) / whole);
        return weights.propagated(share, gradient);
    }
}
