package dev.gambrel.yields.working;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.choice.Mark;
import dev.gambrel.tree.choice.WeightRange;
import java.math.BigDecimal;
import java.math.MathContext;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * What one piece of a cut weighs, from carcass to carcass: taken as normal.
 *
 * @param mean kilograms
 * @param deviation its standard deviation in kilograms; 0 where it is not stated, so that the mean alone decides
 */
public record PieceWeight(double mean, double deviation) {
    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

    /** The mean is a product of doubles; beyond so many digits it says nothing of a limit. */
    private static final MathContext DIGITS = new MathContext(12);

    /**
     * How many pieces, and how much of their weight, lie within a range.
     *
     * <p>Of pieces X with mean μ and standard deviation σ the part between a and b is Φ(β) − Φ(α), where α = (a − μ) / σ and
     * β = (b − μ) / σ, and their part of the weight is the partial expectation over the mean, Φ(β) − Φ(α) − (φ(β) − φ(α))
     * σ / μ (R. L. Winkler, G. M. Roodman and R. R. Britney, "The determination of partial moments", Management Science 19,
     * 1972). The lightest range is taken down to the end of the curve, so that all ranges together are everything. Without a
     * spread the mean decides.
     *
     * @param range weights of one piece
     * @return the part within, neither less than nothing
     */
    public Split within(WeightRange range) {
        if (!(deviation > 0) || !(mean > 0)) {
            return Split.of(range.holds(new Quantity(new BigDecimal(mean).round(DIGITS), Unit.KILOGRAM)));
        }
        double low = range.from().equals(Mark.START) ? Double.NEGATIVE_INFINITY : standardised(range.from());
        double high = standardised(range.to());
        double pieces = STANDARD.cumulativeProbability(high) - STANDARD.cumulativeProbability(low);
        double weight = pieces - deviation / mean * (density(high) - density(low));
        return new Split(Math.max(0, pieces), Math.max(0, weight));
    }

    private double standardised(Mark mark) {
        if (mark instanceof Mark.Beyond) {
            return Double.POSITIVE_INFINITY;
        }
        Quantity weight = mark instanceof Mark.Below below ? below.weight() : ((Mark.Above) mark).weight();
        return (weight.value() - mean) / deviation;
    }

    private static double density(double z) {
        return Double.isInfinite(z) ? 0 : STANDARD.density(z);
    }
}
