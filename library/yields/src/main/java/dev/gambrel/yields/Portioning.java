package dev.gambrel.yields;

import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * How many portions of a fixed weight come from one piece of uncertain weight. What is left after the last whole portion
 * is the remainder.
 *
 * <p>The number N is the floor of a random weight over the portion, so its mean is the sum of the chances of at least 1, at
 * least 2 and so on (W. Feller, An Introduction to Probability Theory and Its Applications, volume 1). The piece is taken
 * as normal, the portions as cut at exactly the target. Portions are counted by comparing weights, never by rounding a
 * quotient; equality allows for a relative 1e-12.
 *
 * @param piece kilograms of one piece
 * @param target kilograms of one portion, more than 0
 */
public record Portioning(Estimate piece, double target) {
    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);
    /** Beyond so many standard deviations a chance is 0 or 1 in double precision. */
    private static final double CERTAIN = 9;
    /** Beyond so many portions to a standard deviation the sum is its integral to better than 0.001 portion. */
    private static final double FINE = 100;
    /** More portions than this are not told apart. */
    private static final double MOST = 1e15;

    /**
     * Checks the portion.
     *
     * @throws IllegalArgumentException if the target is not more than 0
     */
    public Portioning {
        if (!(target > 0)) {
            throw new IllegalArgumentException("a portion weighs more than nothing");
        }
    }

    /**
     * Whether the piece's spread is not stated, so that the number is that of a piece of mean weight.
     *
     * @return true if it says nothing of chance
     */
    public boolean isFromMeanAlone() {
        return piece.spread() instanceof Spread.NotStated;
    }

    /**
     * The expected number of whole portions from one piece. Costs O(1 + standard deviation / target).
     *
     * @return the mean number; from the mean weight alone where the spread is not stated
     */
    public double expectedNumber() {
        return deviation() == 0 ? wholeFrom(piece.mean()) : moments()[0];
    }

    /**
     * The standard deviation of the number of whole portions from one piece.
     *
     * @return the standard deviation, or nothing where the piece's spread is not stated
     */
    public OptionalDouble numberDeviation() {
        if (isFromMeanAlone()) {
            return OptionalDouble.empty();
        }
        double[] m = deviation() == 0 ? new double[] {0, 0} : moments();
        return OptionalDouble.of(Math.sqrt(Math.max(0, m[1])));
    }

    /**
     * The chance that one piece gives a number of portions or more.
     *
     * @param number how many
     * @return from 0 to 1, or nothing where the piece's spread is not stated
     */
    public OptionalDouble chanceOfAtLeast(long number) {
        return isFromMeanAlone() ? OptionalDouble.empty() : OptionalDouble.of(number <= 0 ? 1 : chance(number));
    }

    /**
     * What is expected to be left of one piece: its mean less the portions.
     *
     * @return kilograms
     */
    public double expectedRemainder() {
        return Math.max(0, piece.mean() - target * expectedNumber());
    }

    /**
     * The largest number that one piece gives with at least some certainty.
     *
     * @param certainty a chance, more than 0 and less than 1
     * @return the number, or nothing where the piece's spread is not stated
     */
    public OptionalLong promised(double certainty) {
        if (isFromMeanAlone()) {
            return OptionalLong.empty();
        }
        double light = piece.mean() + deviation() * STANDARD.inverseCumulativeProbability(1 - certainty);
        return OptionalLong.of(wholeFrom(light));
    }

    private double deviation() {
        return piece.spread() instanceof Spread.Stated s ? s.standardDeviation() : 0;
    }

    private long wholeFrom(double weight) {
        long number = (long) Math.min(MOST, weight / target);
        double enough = weight * (1 + 1e-12);
        long fits = (number + 1) * target <= enough ? number + 1 : number * target <= enough ? number : number - 1;
        return Math.max(0, fits);
    }

    private double chance(long number) {
        double sd = deviation();
        return sd == 0
                ? (number <= wholeFrom(piece.mean()) ? 1 : 0)
                : STANDARD.survivalProbability((number * target - piece.mean()) / sd);
    }

    /** Mean and variance of the number; the terms below are all 1, those above all 0. */
    private double[] moments() {
        double sd = deviation();
        if (sd > FINE * target) {
            return fineMoments(sd);
        }
        long certain = (long) Math.max(0, Math.floor((piece.mean() - CERTAIN * sd) / target));
        long last = (long) Math.ceil((piece.mean() + CERTAIN * sd) / target);
        double more = 0;
        double moreSquared = 0;
        for (long i = 1; certain + i <= last; i++) {
            double p = chance(certain + i);
            more += p;
            moreSquared += (2 * i - 1) * p;
        }
        return new double[] {certain + more, moreSquared - more * more};
    }

    /** Euler and Maclaurin's formula for portions much finer than the spread. */
    private double[] fineMoments(double sd) {
        double z = piece.mean() / sd;
        double positive = STANDARD.cumulativeProbability(z);
        double mean = (piece.mean() * positive + sd * STANDARD.density(z)) / target - positive / 2;
        return new double[] {mean, sd * sd / (target * target) + 1.0 / 12};
    }
}
