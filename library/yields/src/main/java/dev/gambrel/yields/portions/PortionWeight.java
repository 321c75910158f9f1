package dev.gambrel.yields.portions;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Spread;
import java.util.Optional;
import java.util.OptionalDouble;
import org.apache.commons.statistics.distribution.NormalDistribution;

/**
 * The weight of one portion as the hand cuts it, taken as normal.
 *
 * @param aim the mean
 * @param deviation one standard deviation, 0 or more, in the same unit
 */
public record PortionWeight(double aim, double deviation) {
    private static final NormalDistribution STANDARD = NormalDistribution.of(0, 1);

    /**
     * The weight of a portion whose spread is stated.
     *
     * @param weight an expected weight
     * @return the weight, or nothing where its spread is not stated
     */
    public static Optional<PortionWeight> of(Estimate weight) {
        return weight.spread() instanceof Spread.Stated stated
                ? Optional.of(new PortionWeight(weight.mean(), stated.standardDeviation()))
                : Optional.empty();
    }

    /**
     * The mean to aim at so that few enough are lighter than a weight.
     *
     * @param least the weight
     * @param deviation one standard deviation
     * @param chanceBelow how many may be lighter, more than 0 and less than 1
     * @return the mean
     */
    public static double aimFor(double least, double deviation, double chanceBelow) {
        return least + deviation * STANDARD.inverseSurvivalProbability(chanceBelow);
    }

    /**
     * What is given away over a weight that is paid for: the mean of what each portion weighs more than it, those that weigh
     * less counted as nothing. It is s L(z), where L(z) = φ(z) − z (1 − Φ(z)) is the loss function of the normal
     * distribution (E. A. Silver, D. F. Pyke, R. Peterson, Inventory Management and Production Planning and Scheduling).
     *
     * @param paid the weight that is paid for
     * @return in the unit of the weights
     */
    public double giveAwayOver(double paid) {
        if (deviation == 0) {
            return Math.max(0, aim - paid);
        }
        double z = (paid - aim) / deviation;
        return deviation * (STANDARD.density(z) - z * STANDARD.survivalProbability(z));
    }

    /**
     * The share of portions that are lighter than a weight.
     *
     * @param least the weight
     * @return from 0 to 1
     */
    public double shareUnder(double least) {
        return deviation == 0 ? (aim < least ? 1 : 0) : STANDARD.cumulativeProbability((least - aim) / deviation);
    }

    /**
     * The share of portions that are heavier than a weight.
     *
     * @param most the weight
     * @return from 0 to 1, accurate in the tail
     */
    public double shareOver(double most) {
        return deviation == 0 ? (aim > most ? 1 : 0) : STANDARD.survivalProbability((most - aim) / deviation);
    }

    /**
     * The share of portions that a limit accepts.
     *
     * @param limit a limit on the weight, in kilograms as the mean is
     * @return from 0 to 1, or nothing where there is no limit
     */
    public OptionalDouble shareWithin(Limit limit) {
        if (limit instanceof Limit.NotStated) {
            return OptionalDouble.empty();
        }
        double low = limit.least().map(Quantity::value).orElse(Double.NEGATIVE_INFINITY);
        double high = limit.most().map(Quantity::value).orElse(Double.POSITIVE_INFINITY);
        if (deviation == 0) {
            return OptionalDouble.of(low <= aim && aim <= high ? 1 : 0);
        }
        return OptionalDouble.of(
                low > high ? 0 : STANDARD.probability((low - aim) / deviation, (high - aim) / deviation));
    }
}
