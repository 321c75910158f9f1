package dev.gambrel.yields.portions;

import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * What is left where a last portion smaller than the others counts as well.
 *
 * <p>With n portions the last takes what there is, up to a whole one. So what is left besides the ends is what exceeds n
 * whole portions and is not yet enough for another: the sum over n of the mean of X − a between a and b, where n whole
 * portions need a and n + 1 are reached at b. For a normal X that is (μ − a)(Φ(b') − Φ(a')) + σ(φ(a') − φ(b')), a' and b'
 * in standard deviations from the mean.
 */
final class SmallerLast {
    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);
    private static final double CERTAIN = 9;

    private final Portioning portions;
    private final double mean;
    private final double sd;

    SmallerLast(Portioning portions) {
        this.portions = portions;
        this.mean = portions.piece().mean();
        this.sd = portions.deviation();
    }

    double expectedRemainder() {
        if (sd == 0) {
            return remainderOf(mean);
        }
        double reached = portions.last() + portions.between();
        if (portions.isFine()) {
            return portions.ends() + reached * reached / (2 * portions.step());
        }
        double first = portions.ends() + portions.last();
        double left = between(0, 0, first) + portions.ends() * portions.chance(1);
        long n = (long) Math.max(1, Math.floor((mean - CERTAIN * sd) / portions.step()));
        for (; whole(n) < mean + CERTAIN * sd; n++) {
            left += between(whole(n), whole(n), whole(n) + reached);
        }
        return left;
    }

    /** What n whole portions need, and the ends with them. */
    private double whole(long n) {
        return portions.ends() + n * portions.each() + (n - 1) * portions.between();
    }

    private double remainderOf(double size) {
        long n = portions.wholeFrom(size);
        return n == 0 ? size : portions.ends() + Math.max(0, size - whole(n));
    }

    /** The mean of X − origin where X lies from low to high, and of 0 elsewhere. */
    private double between(double origin, double low, double high) {
        double from = (low - mean) / sd;
        double to = (high - mean) / sd;
        return (mean - origin) * tail(low, high) + sd * (STANDARD.density(from) - STANDARD.density(to));
    }

    private double tail(double low, double high) {
        return STANDARD.probability((low - mean) / sd, (high - mean) / sd);
    }
}
