package dev.gambrel.yields.portions;

/**
 * What is left where a last portion smaller than the others counts as well.
 *
 * <p>With n portions the last takes what there is, up to a whole one. So what is left besides the ends is what exceeds n
 * whole portions and is not yet enough for another: the sum over n of the mean of X − a between a and b, where n whole
 * portions need a and n + 1 are reached at b.
 */
final class SmallerLast {
    private final Portioning portions;

    SmallerLast(Portioning portions) {
        this.portions = portions;
    }

    double expectedRemainder() {
        if (portions.deviation() == 0) {
            return remainderOf(portions.piece().mean());
        }
        double reached = portions.last() + portions.between();
        PieceSize size = portions.size();
        double first = portions.ends() + portions.last();
        double left = size.meanBetween(0, first) + portions.ends() * size.atLeast(first);
        if (portions.isFine(size)) {
            return left + size.atLeast(first) * reached * reached / (2 * portions.step());
        }
        long n = (long) Math.max(1, Math.floor(size.smallest() / portions.step()));
        for (; whole(n) < size.largest(); n++) {
            double from = whole(n);
            left += size.meanBetween(from, from + reached) - from * size.between(from, from + reached);
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
}
