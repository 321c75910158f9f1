package dev.gambrel.yields.packs.planning;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.yields.packs.rule.PackRule;
import dev.gambrel.yields.packs.rule.Tolerance;
import dev.gambrel.yields.portions.PortionWeight;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * The lowest mean at which packs that stray by so much keep the packer's three rules. Weights are taken as normal.
 *
 * <p>It is the greatest of Q, T1 + z(0.975) s and T2 + z(0.9999) s, that is Q − T + 1.96 s and Q − 2T + 3.72 s, with what
 * the mean drifts between two adjustments on top.
 *
 * @param tolerance nominal quantity and tolerable negative error
 * @param deviation one standard deviation of packs over the time between two adjustments, kilograms, 0 or more
 * @param drift how far the mean may sink before it is set again, kilograms, 0 or more
 */
public record PackAim(Tolerance tolerance, double deviation, double drift) {
    /** The share that may be under T1: 2.5 %, as packers are told; from memory. */
    public static final double UNDER_FIRST = 0.025;

    /** The share that is taken for none under T2: 1 in 10,000, as packers are told; from memory. */
    public static final double UNDER_SECOND = 0.000_1;

    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

    /**
     * Checks the figures.
     *
     * @throws IllegalArgumentException if the spread or the drift is less than 0 or no number
     */
    public PackAim {
        if (!(deviation >= 0 && drift >= 0 && Double.isFinite(deviation + drift))) {
            throw new IllegalArgumentException("a spread and a drift are 0 or more");
        }
    }

    /**
     * The aim for a mean that does not drift.
     *
     * @param tolerance nominal quantity and tolerable negative error
     * @param deviation one standard deviation of packs, a weight
     * @return the aim
     * @throws IllegalArgumentException if the spread is no weight or less than 0
     */
    public static PackAim of(Tolerance tolerance, Quantity deviation) {
        return new PackAim(tolerance, deviation.measuring(Dimension.WEIGHT).value(), 0);
    }

    private double lowest(PackRule rule) {
        return switch (rule) {
            case MEAN -> tolerance.nominal().value();
            case FIRST_LIMIT -> PortionWeight.aimFor(tolerance.firstLimit().value(), deviation, UNDER_FIRST);
            case SECOND_LIMIT -> PortionWeight.aimFor(tolerance.secondLimit().value(), deviation, UNDER_SECOND);
        };
    }

    /**
     * Which rule asks for the highest mean.
     *
     * @return the rule; of two that ask for the same the earlier
     */
    public PackRule governs() {
        PackRule governs = PackRule.MEAN;
        for (PackRule rule : PackRule.values()) {
            governs = lowest(rule) > lowest(governs) ? rule : governs;
        }
        return governs;
    }

    /**
     * The lowest mean.
     *
     * @return kilograms
     */
    public double mean() {
        return lowest(governs()) + drift;
    }

    /**
     * What each pack is given on average over what its label says.
     *
     * @return kilograms, 0 or more
     */
    public double givenAway() {
        return mean() - tolerance.nominal().value();
    }

    /**
     * The share of packs that is under a limit where the mean is as low as {@link #mean}.
     *
     * @param limit T1, T2 or any weight
     * @return from 0 to 1
     */
    public double shareUnder(Quantity limit) {
        double gap = limit.value() - mean();
        return deviation == 0 ? (gap > 0 ? 1 : 0) : STANDARD.cumulativeProbability(gap / deviation);
    }
}
