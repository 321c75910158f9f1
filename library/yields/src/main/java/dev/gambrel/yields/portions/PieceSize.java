package dev.gambrel.yields.portions;

import java.util.ArrayList;
import java.util.List;

/**
 * How large one piece is: never less than nothing, with the mean and the standard deviation that are stated.
 *
 * <p>The stated figures are those of the piece, so that what is made of it adds up to the stated mean. As long as the
 * standard deviation is at most 0.3 of the mean the piece is taken as normal, of which less than 1 in 2000 lies below 0 and
 * gives no portion. From 0.4 on it is a normal distribution truncated at 0 whose mean and standard deviation, once
 * truncated, are those stated: of all distributions of what is not less than 0 the one that adds nothing else (D. C.
 * Dowson, A. Wragg, "Maximum-entropy distributions having prescribed first and second moments", IEEE Transactions on
 * Information Theory 19, 1973). Between the two figures it passes evenly from the one to the other, so that no result
 * jumps. A truncated normal strays by less than its mean; so beyond 0.9 of the mean the piece is taken as one that now and
 * then is not there at all. A heavier carcass, which scales both figures, never gives fewer.
 *
 * <p>The printed 95 % range of a weight that would begin below 0 is that of a lognormal distribution, whose ends can be
 * written down. Portions are not counted with it: it would take over with a jump where that range reaches 0. Immutable.
 */
final class PieceSize {
    /** Up to this part of the mean the normal distribution itself. */
    private static final double NORMAL = 0.3;
    /** From this part of the mean on the truncated one alone. */
    private static final double TRUNCATED = 0.4;
    /** Beyond this part of the mean a piece is not always there. */
    private static final double ALWAYS_THERE = 0.9;
    /** Beyond so many standard deviations a chance is 0 or 1 in double precision. */
    private static final double CERTAIN = 9;

    private record Share(double part, TruncatedNormal of) {}

    private final List<Share> shares;
    private final double notThere;

    private PieceSize(List<Share> shares, double notThere) {
        this.shares = shares;
        this.notThere = notThere;
    }

    /** A piece of a mean and a standard deviation more than 0; a piece of no mean is nothing. */
    static PieceSize of(double mean, double deviation) {
        if (!(mean > 0)) {
            return new PieceSize(List.of(), 1);
        }
        double relative = deviation / mean;
        if (relative > ALWAYS_THERE) {
            double there = (1 + ALWAYS_THERE * ALWAYS_THERE) / (1 + relative * relative);
            return new PieceSize(List.of(new Share(there, truncated(mean / there, ALWAYS_THERE))), 1 - there);
        }
        double truncated = Math.min(1, Math.max(0, (relative - NORMAL) / (TRUNCATED - NORMAL)));
        List<Share> shares = new ArrayList<>(2);
        if (truncated < 1) {
            shares.add(new Share(1 - truncated, new TruncatedNormal(Double.NEGATIVE_INFINITY, mean, deviation)));
        }
        if (truncated > 0) {
            shares.add(new Share(truncated, truncated(mean, relative)));
        }
        return new PieceSize(shares, 0);
    }

    /** By halving: the further the bound lies above the mean, the nearer deviation and mean of what is kept. */
    private static TruncatedNormal truncated(double mean, double relative) {
        double low = -1 / NORMAL - 1;
        double high = 2;
        for (int step = 0; step < 60; step++) {
            double middle = (low + high) / 2;
            TruncatedNormal unit = new TruncatedNormal(0, -middle, 1);
            if (unit.keptDeviation() < relative * unit.keptMean()) {
                low = middle;
            } else {
                high = middle;
            }
        }
        double scale = mean / new TruncatedNormal(0, -low, 1).keptMean();
        return new TruncatedNormal(0, -low * scale, scale);
    }

    /** The chance of so much or more. */
    double atLeast(double size) {
        double chance = 0;
        for (Share share : shares) {
            chance += share.part * share.of.atLeast(size);
        }
        return chance;
    }

    /** The chance of less: what is not there is less than anything. */
    double under(double size) {
        return notThere + between(Double.NEGATIVE_INFINITY, size);
    }

    /** The chance of {@code from} or more, and less than {@code to}, of a piece that is there. */
    double between(double from, double to) {
        double chance = 0;
        for (Share share : shares) {
            chance += share.part * share.of.between(from, to);
        }
        return chance;
    }

    /** The mean of what lies between two bounds, the rest counted as nothing. */
    double meanBetween(double from, double to) {
        double mean = 0;
        for (Share share : shares) {
            mean += share.part * share.of.meanBetween(from, to);
        }
        return mean;
    }

    /** A smaller piece is less likely than 1e-18. */
    double smallest() {
        double smallest = notThere > 0 ? 0 : Double.POSITIVE_INFINITY;
        for (Share share : shares) {
            smallest = Math.min(smallest, share.of.mean() - CERTAIN * share.of.deviation());
        }
        return Math.max(0, smallest);
    }

    /** A larger piece is less likely than 1e-18. */
    double largest() {
        double largest = 0;
        for (Share share : shares) {
            largest = Math.max(largest, share.of.mean() + CERTAIN * share.of.deviation());
        }
        return largest;
    }
}
