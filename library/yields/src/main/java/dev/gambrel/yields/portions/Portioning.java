package dev.gambrel.yields.portions;

import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Spread;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/**
 * How many portions of a fixed size come from one piece of uncertain size, whether kilograms are portioned or millimetres
 * sliced. What is left after the last whole portion is the remainder.
 *
 * <p>n portions need {@code ends + n × each + (n − 1) × between}. Where a smaller last one counts as well, the last needs
 * only {@code last}. The number N is the floor of a random size over the portion, so its mean is the sum of the chances of
 * at least 1, at least 2 and so on (W. Feller, An Introduction to Probability Theory and Its Applications, volume 1). The
 * piece is taken as normal as long as its standard deviation is at most 0.3 of its mean, and beyond as truncated at 0, mean
 * and standard deviation of the piece staying as stated; the portions as cut at exactly the target. Portions are counted by
 * comparing sizes, never by rounding a quotient; equality allows for a relative 1e-12.
 *
 * @param piece the size of one piece
 * @param each the size of one portion in the same unit, more than 0
 * @param between what is lost at each cut between two portions
 * @param ends what is no portion at both ends together
 * @param last the least that counts as a last portion, at most {@code each}
 */
public record Portioning(Estimate piece, double each, double between, double ends, double last) {
    /** More portions than this are not told apart. */
    private static final double MOST = 1e15;

    /**
     * Checks the portion.
     *
     * @throws IllegalArgumentException if {@code each} is not more than 0, another is less than 0, {@code last} is more than
     *     {@code each}, or one is endless or not a number
     */
    public Portioning {
        if (!Double.isFinite(piece.mean()) || piece.spread().variance() == Double.POSITIVE_INFINITY) {
            throw new IllegalArgumentException("a piece has a size, not " + piece);
        }
        if (!Double.isFinite(each + between + ends)) {
            throw new IllegalArgumentException("a portion and what is lost have an end");
        }
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
     * How likely each number of portions from one piece is.
     *
     * @return the distribution, or nothing where the piece's spread is not stated
     */
    public Optional<NumberOfPortions> number() {
        if (isFromMeanAlone()) {
            return Optional.empty();
        }
        if (deviation() == 0) {
            return Optional.of(Listed.exactly(wholeFrom(piece.mean())));
        }
        PieceSize size = size();
        long fewest = certain(size);
        long most = possible(size);
        if (isFine(size)) {
            double[] m = moments();
            return Optional.of(new NearlyNormal(m[0], Math.sqrt(m[1])));
        }
        double[] chances = new double[(int) (most - fewest) + 1];
        for (int i = 0; i < chances.length; i++) {
            long n = fewest + i;
            chances[i] = n == 0 ? size.under(need(1)) : size.between(need(n), need(n + 1));
        }
        return Optional.of(new Listed(fewest, chances));
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
     * @throws IllegalArgumentException if the certainty is out of its range
     */
    public OptionalLong promised(double certainty) {
        Promise.check(certainty);
        if (isFromMeanAlone()) {
            return OptionalLong.empty();
        }
        if (deviation() == 0) {
            return OptionalLong.of(wholeFrom(piece.mean()));
        }
        PieceSize size = size();
        long sure = 0;
        for (long unsure = possible(size) + 1; unsure - sure > 1; ) {
            long middle = sure + (unsure - sure) / 2;
            if (size.atLeast(need(middle)) >= certainty) {
                sure = middle;
            } else {
                unsure = middle;
            }
        }
        return OptionalLong.of(sure);
    }

    Portioning of(double mean, double deviation) {
        return new Portioning(new Estimate(mean, new Spread.Stated(deviation)), each, between, ends, last);
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
        return deviation() == 0 ? (number <= wholeFrom(piece.mean()) ? 1 : 0) : size().atLeast(need(number));
    }

    PieceSize size() {
        return PieceSize.of(piece.mean(), deviation());
    }

    /** The size that gives so many. */
    private double need(long number) {
        return number * step() - lead();
    }

    /** Every piece gives as many. */
    private long certain(PieceSize size) {
        return (long) Math.max(0, Math.floor((size.smallest() + lead()) / step()));
    }

    /** No piece gives more. */
    private long possible(PieceSize size) {
        return (long) Math.max(0, Math.ceil((size.largest() + lead()) / step()));
    }

    /** Mean and variance of the number; the terms below are all 1, those above all 0. */
    private double[] moments() {
        PieceSize size = size();
        if (isFine(size)) {
            return fineMoments(size);
        }
        long certain = certain(size);
        long possible = possible(size);
        double more = 0;
        double moreSquared = 0;
        for (long i = 1; certain + i <= possible; i++) {
            double p = size.atLeast(need(certain + i));
            more += p;
            moreSquared += (2 * i - 1) * p;
        }
        return new double[] {certain + more, moreSquared - more * more};
    }

    /** Euler and Maclaurin's formula for portions much finer than the spread. */
    private double[] fineMoments(PieceSize size) {
        double positive = size.atLeast(-lead());
        double mean = size.meanBetween(-lead(), Double.POSITIVE_INFINITY) + lead() * positive;
        return new double[] {mean / step() - positive / 2, Math.pow(deviation() / step(), 2) + 1.0 / 12};
    }

    /** Whether so many numbers are likely that their sum is its integral, to better than 0.001 portion. */
    boolean isFine(PieceSize size) {
        return size.largest() - size.smallest() > (Listed.MOST - 4) * step();
    }
}
