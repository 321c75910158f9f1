package dev.gambrel.yields.portions;

import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Spread;
import java.util.OptionalDouble;
import java.util.OptionalLong;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * How many portions of a fixed size come from one piece of uncertain size, whether kilograms are portioned or millimetres
 * sliced. What is left after the last whole portion is the remainder.
 *
 * <p>n portions need {@code ends + n × each + (n − 1) × between}. Where a smaller last one counts as well, the last needs
 * only {@code last}. The number N is the floor of a random size over the portion, so its mean is the sum of the chances of
 * at least 1, at least 2 and so on (W. Feller, An Introduction to Probability Theory and Its Applications, volume 1). The
 * piece is taken as normal, the portions as cut at exactly the target. Portions are counted by comparing sizes, never by
 * rounding a quotient; equality allows for a relative 1e-12.
 *
 * @param piece the size of one piece
 * @param each the size of one portion in the same unit, more than 0
 * @param between what is lost at each cut between two portions
 * @param ends what is no portion at both ends together
 * @param last the least that counts as a last portion, at most {@code each}
 */
public record Portioning(Estimate piece, double each, double between, double ends, double last) {
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
     * @throws IllegalArgumentException if {@code each} is not more than 0, another is less than 0, or {@code last} is more
     *     than {@code each}
     */
    public Portioning {
        if (!(each > 0 && between >= 0 && ends >= 0 && last >= 0 && last <= each)) {
            throw new IllegalArgumentException("a portion is more than nothing, and what is lost is not less");
        }
    }

    /**
     * Portions with nothing lost between them, from end to end, only whole ones counted.
     *
     * @param piece the size of one piece
     * @param each the size of one portion, more than 0
     * @throws IllegalArgumentException if it is not
     */
    public Portioning(Estimate piece, double each) {
        this(piece, each, 0, 0, each);
    }

    /**
     * Whether the piece's spread is not stated, so that the number is that of a piece of mean size.
     *
     * @return true if it says nothing of chance
     */
    public boolean isFromMeanAlone() {
        return piece.spread() instanceof Spread.NotStated;
    }

    /**
     * The expected number of portions from one piece. Costs O(1 + standard deviation / each).
     *
     * @return the mean number; from the mean size alone where the spread is not stated
     */
    public double expectedNumber() {
        return deviation() == 0 ? wholeFrom(piece.mean()) : moments()[0];
    }

    /**
     * The standard deviation of the number of portions from one piece.
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
     * What the cuts between portions are expected to take of one piece. What the cut before a remainder takes is counted
     * with the remainder.
     *
     * @return in the unit of the piece
     */
    public double expectedLoss() {
        return between == 0 ? 0 : between * Math.max(0, expectedNumber() - chance(1));
    }

    /**
     * What is expected to be left of one piece, its ends included: its mean less the portions and the cuts between them.
     *
     * @return in the unit of the piece
     */
    public double expectedRemainder() {
        if (last < each) {
            return new SmallerLast(this).expectedRemainder();
        }
        return Math.max(0, piece.mean() - each * expectedNumber() - expectedLoss());
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

    double deviation() {
        return piece.spread() instanceof Spread.Stated s ? s.standardDeviation() : 0;
    }

    double step() {
        return each + between;
    }

    /** What is added to a piece so that it gives as many steps as portions. */
    private double lead() {
        return between == 0 && last == each ? -ends : step() - last - ends;
    }

    long wholeFrom(double size) {
        double lengthened = size + lead();
        long number = (long) Math.min(MOST, lengthened / step());
        double enough = lengthened * (1 + 1e-12);
        long fits = (number + 1) * step() <= enough ? number + 1 : number * step() <= enough ? number : number - 1;
        return Math.max(0, fits);
    }

    double chance(long number) {
        double sd = deviation();
        return sd == 0
                ? (number <= wholeFrom(piece.mean()) ? 1 : 0)
                : STANDARD.survivalProbability((number * step() - piece.mean() - lead()) / sd);
    }

    /** Mean and variance of the number; the terms below are all 1, those above all 0. */
    private double[] moments() {
        double sd = deviation();
        double mean = piece.mean() + lead();
        if (sd > FINE * step()) {
            return fineMoments(mean, sd);
        }
        long certain = (long) Math.max(0, Math.floor((mean - CERTAIN * sd) / step()));
        long possible = (long) Math.ceil((mean + CERTAIN * sd) / step());
        double more = 0;
        double moreSquared = 0;
        for (long i = 1; certain + i <= possible; i++) {
            double p = chance(certain + i);
            more += p;
            moreSquared += (2 * i - 1) * p;
        }
        return new double[] {certain + more, moreSquared - more * more};
    }

    /** Euler and Maclaurin's formula for portions much finer than the spread. */
    private double[] fineMoments(double mean, double sd) {
        double z = mean / sd;
        double positive = STANDARD.cumulativeProbability(z);
        double number = (mean * positive + sd * STANDARD.density(z)) / step() - positive / 2;
        return new double[] {number, sd * sd / (step() * step()) + 1.0 / 12};
    }

    boolean isFine() {
        return deviation() > FINE * step();
    }
}
