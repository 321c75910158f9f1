package dev.gambrel.yields.portions;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;

/**
 * How many portions several pieces give together, those of different carcasses being independent.
 *
 * <p>The number from independent pieces is the convolution of their numbers; what is spread over more than {@link
 * Listed#MOST} numbers is taken as normal. What pieces have in common, a doubt about their mean or what the two of a carcass
 * share, is a mean that is not known: the chances are those at each mean, averaged over its normal distribution by the
 * trapezoidal rule, which for such a function converges faster than any power of its step (L. N. Trefethen, J. A. C.
 * Weideman, "The exponentially convergent trapezoidal rule", SIAM Review 56, 2014). A piece of which more than 0.3 strays
 * keeps its mean only nearly where it is correlated by neither 0 nor 1.
 */
final class FromSeveral {
    /** Beyond so many standard deviations no mean is looked at. */
    private static final double FURTHEST = 8.5;
    /** With a step of this over √(1 + r²) the rule is exact to 1e-8, r being what is common to what the mean of all strays. */
    private static final double STEP = 0.9;
    /** A finer step is not taken: then what is common is two hundred times what the mean of all strays. */
    private static final double FINEST = 0.0045;

    private static final int MOST_AVERAGED = 1 << 20;

    private final int ofCarcass;
    private final double correlation;
    private final long carcasses;
    private final long single;

    /**
     * @param pieces how many
     * @param ofCarcass how many of them come from one carcass
     * @param correlation of these, from 0 to 1
     */
    FromSeveral(long pieces, int ofCarcass, double correlation) {
        this.ofCarcass = ofCarcass;
        this.correlation = correlation;
        this.carcasses = pieces / ofCarcass;
        this.single = pieces % ofCarcass;
    }

    /** The number where the mean size of a piece is in doubt by a part of it, and the spread of the size is stated. */
    NumberOfPortions of(Portioning one, double doubt) {
        return averaged(one, Math.max(0, doubt * one.piece().mean()), carcasses + single, this::ofKnownMean);
    }

    private NumberOfPortions ofKnownMean(Portioning one) {
        return sum(ofOneCarcass(one), carcasses, one.number().orElseThrow(), single);
    }

    private NumberOfPortions ofOneCarcass(Portioning one) {
        if (correlation == 1) {
            NumberOfPortions piece = one.number().orElseThrow();
            return piece instanceof Listed listed
                    ? listed.alike(ofCarcass)
                    : new NearlyNormal(ofCarcass * piece.expected(), ofCarcass * piece.deviation());
        }
        double sd = one.deviation();
        Portioning own = one.of(one.piece().mean(), Math.sqrt(1 - correlation) * sd);
        return averaged(own, Math.sqrt(correlation) * sd, ofCarcass, each -> {
            NumberOfPortions piece = each.number().orElseThrow();
            return sum(piece, ofCarcass, piece, 0);
        });
    }

    /** So many of one and so many of another, all independent. */
    private static NumberOfPortions sum(NumberOfPortions one, long ones, NumberOfPortions other, long others) {
        double mean = ones * one.expected() + others * other.expected();
        double sd = Math.sqrt(ones * Math.pow(one.deviation(), 2) + others * Math.pow(other.deviation(), 2));
        return one instanceof Listed first && other instanceof Listed second && 2 * 9.3 * sd < Listed.MOST
                ? first.times(ones).plus(second.times(others))
                : new NearlyNormal(mean, sd);
    }

    private static NumberOfPortions averaged(
            Portioning one, double common, long pieces, Function<Portioning, NumberOfPortions> atMean) {
        if (common == 0) {
            return atMean.apply(one);
        }
        double ratio = common * Math.sqrt(pieces) / one.deviation();
        double step = Math.max(FINEST, STEP / Math.sqrt(1 + ratio * ratio));
        int nodes = (int) Math.ceil(FURTHEST / step);
        double[] chance = new double[2 * nodes + 1];
        List<NumberOfPortions> numbers = new ArrayList<>(chance.length);
        double all = 0;
        for (int i = 0; i < chance.length; i++) {
            double z = (i - nodes) * step;
            chance[i] = Math.exp(-z * z / 2);
            all += chance[i];
            numbers.add(atMean.apply(one.of(one.piece().mean() + z * common, one.deviation())));
        }
        for (int i = 0; i < chance.length; i++) {
            chance[i] /= all;
        }
        return average(numbers, chance);
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
