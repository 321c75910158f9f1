package dev.gambrel.yields.portions;

import java.util.ArrayList;
import java.util.List;

/**
 * How many portions several pieces give together.
 *
 * <p>The number from independent pieces is the convolution of their numbers; what is spread over more than {@link
 * Listed#MOST} numbers is taken as normal. Doubt about the mean is common to all pieces: the chances are those at each
 * mean, averaged over the normal distribution of the mean by the trapezoidal rule, which for such a function converges
 * faster than any power of its step (L. N. Trefethen, J. A. C. Weideman, "The exponentially convergent trapezoidal rule",
 * SIAM Review 56, 2014).
 */
final class FromSeveral {
    /** Beyond so many standard deviations no mean is looked at. */
    private static final double FURTHEST = 8.5;
    /** With a step of this over √(1 + r²) the rule is exact to 1e-8, r being the doubt to what the mean of all strays. */
    private static final double STEP = 0.9;
    /** A finer step is not taken: then the doubt is two hundred times what the mean of all strays. */
    private static final double FINEST = 0.0045;

    private static final int MOST_AVERAGED = 1 << 20;

    private final long groups;
    private final int alike;
    private final long single;

    /** So many pieces, of which so many at a time are alike. */
    FromSeveral(long pieces, int alike) {
        this.alike = alike;
        this.groups = pieces / alike;
        this.single = pieces % alike;
    }

    /** The number where the mean size of a piece is in doubt by a part of it, and the spread of the size is stated. */
    NumberOfPortions of(Portioning one, double doubt) {
        double common = doubt * one.piece().mean();
        if (!(common > 0)) {
            return known(one);
        }
        double ratio = common * Math.sqrt(groups + single) / one.deviation();
        double step = Math.max(FINEST, STEP / Math.sqrt(1 + ratio * ratio));
        int nodes = (int) Math.ceil(FURTHEST / step);
        double[] chance = new double[2 * nodes + 1];
        List<NumberOfPortions> numbers = new ArrayList<>(chance.length);
        double all = 0;
        for (int i = 0; i < chance.length; i++) {
            double z = (i - nodes) * step;
            chance[i] = Math.exp(-z * z / 2);
            all += chance[i];
            numbers.add(known(one.ofMean(one.piece().mean() + z * common)));
        }
        for (int i = 0; i < chance.length; i++) {
            chance[i] /= all;
        }
        return average(numbers, chance);
    }

    private NumberOfPortions known(Portioning one) {
        NumberOfPortions piece = one.number().orElseThrow();
        double mean = (groups * alike + single) * piece.expected();
        double sd = piece.deviation() * Math.sqrt((double) groups * alike * alike + single);
        boolean isListed = piece instanceof Listed && 2 * 9.3 * sd < Listed.MOST;
        return isListed ? counted((Listed) piece) : new NearlyNormal(mean, sd);
    }

    private Listed counted(Listed piece) {
        Listed grouped = piece.alike(alike).times(groups);
        return single == 0 ? grouped : grouped.plus(piece.times(single));
    }

    private static NumberOfPortions average(List<NumberOfPortions> numbers, double[] chance) {
        List<Listed> listed = new ArrayList<>(numbers.size());
        numbers.forEach(number -> {
            if (number instanceof Listed each) {
                listed.add(each);
            }
        });
        if (listed.size() == numbers.size() && Listed.span(listed) < MOST_AVERAGED) {
            return Listed.oneOf(listed, chance);
        }
        double mean = 0;
        for (int i = 0; i < chance.length; i++) {
            mean += chance[i] * numbers.get(i).expected();
        }
        double variance = 0;
        for (int i = 0; i < chance.length; i++) {
            NumberOfPortions each = numbers.get(i);
            variance += chance[i] * (Math.pow(each.deviation(), 2) + Math.pow(each.expected() - mean, 2));
        }
        return new NearlyNormal(mean, Math.sqrt(variance));
    }
}
