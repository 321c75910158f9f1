package dev.gambrel.yields.houseshares;

import dev.gambrel.text.TradeName;
import dev.gambrel.yields.composition.Composition;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Interval;
import dev.gambrel.yields.figure.JointEstimate;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.apache.commons.statistics.distribution.TDistribution;

/**
 * Shares whose log-ratios are normal: of the next carcass they have a multivariate t distribution. The error of the weighing is still
 * in the spread.
 *
 * @param parts the names of the parts
 * @param tests how many tests there are
 * @param centre where the shares lie
 * @param logRatios centred log-ratios and how they vary between carcasses
 * @param number how many tests the centre rests on, the table's worth among them; may be infinite
 * @param freedom degrees of freedom of the covariance; may be infinite
 */
public record LogRatioModel(
        List<TradeName> parts, int tests, Composition centre, JointEstimate logRatios, double number, double freedom)
        implements LogRatioShares {
    private static final double UPPER = 0.975;

    /** Copies the list. */
    public LogRatioModel {
        parts = List.copyOf(parts);
    }

    @Override
    public ExpectedShares expected() {
        return new ExpectedShares(
                IntStream.range(0, parts.size()).mapToObj(this::expected).toList(), tests);
    }

    private ExpectedShare expected(int part) {
        Estimate share = share(part);
        return new ExpectedShare(
                parts.get(part),
                share.mean(),
                share.spread(),
                share.times(1 / Math.sqrt(number)).spread());
    }

    /** To the first order: the derivative of a share by the logarithms of all is p (e − p). */
    private Estimate share(int part) {
        double[] gradient = new double[parts.size()];
        Arrays.setAll(gradient, k -> centre.share(part) * ((k == part ? 1 : 0) - centre.share(k)));
        return logRatios.propagated(centre.share(part), gradient);
    }

    /**
     * The range that holds the centre of the house in 95 of 100 cases.
     *
     * @param part the index of a part
     * @return parts of 1, inside 0 and 1
     */
    public Interval mean95(int part) {
        return range(part, 1 / number);
    }

    /**
     * The range that holds the share of the next carcass, weighed as these were, in 95 of 100 cases. It is Student's of the logarithm of
     * the share over all others, whose spread is taken to the first order.
     *
     * @param part the index of a part
     * @return parts of 1, inside 0 and 1
     */
    public Interval next95(int part) {
        return range(part, 1 + 1 / number);
    }

    private Interval range(int part, double variances) {
        double p = centre.share(part);
        double sd = Math.sqrt(share(part).spread().variance() * variances) / (p * (1 - p));
        double half = sd == 0 ? 0 : TDistribution.of(freedom).inverseCumulativeProbability(UPPER) * sd;
        double odds = p / (1 - p);
        return new Interval(ofOdds(odds * Math.exp(-half)), ofOdds(odds * Math.exp(half)));
    }

    private static double ofOdds(double odds) {
        return odds == Double.POSITIVE_INFINITY ? 1 : odds / (1 + odds);
    }
}
