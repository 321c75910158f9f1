package dev.gambrel.yields.packs.planning;

import dev.gambrel.yields.packs.rule.SamplingStage;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import org.apache.commons.statistics.distribution.BinomialDistribution;
import org.apache.commons.statistics.distribution.DiscreteDistribution;
import org.apache.commons.statistics.distribution.HypergeometricDistribution;

/**
 * How likely a sampling plan is to pass a batch by its number of short packs: the operating characteristic (E. G. Schilling,
 * D. V. Neubauer, Acceptance Sampling in Quality Control). Single and double sampling.
 *
 * @param stages one or two; the second counts the packs of both
 */
public record ChanceOfPassing(List<SamplingStage> stages) {
    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException unless there is one stage, or two of which the second weighs more packs
     */
    public ChanceOfPassing {
        stages = List.copyOf(stages);
        boolean single = stages.size() == 1;
        boolean grows =
                stages.size() == 2 && stages.get(1).packs() > stages.get(0).packs();
        if (!single && !grows) {
            throw new IllegalArgumentException("single or double sampling");
        }
    }

    /**
     * A plan with one sample.
     *
     * @param packs how many are weighed
     * @param accept the most that may be short
     * @return its chances
     */
    public static ChanceOfPassing single(int packs, long accept) {
        return new ChanceOfPassing(List.of(SamplingStage.last(packs, accept)));
    }

    /**
     * The chance for a batch so large that drawing packs does not change it.
     *
     * @param share the share of short packs in it, from 0 to 1
     * @return from 0 to 1; accurate in both tails. Costs O(packs)
     * @throws IllegalArgumentException if the share is not one
     */
    public double inLargeBatch(double share) {
        return chance(BinomialDistribution.of(first().packs(), share), drawn -> BinomialDistribution.of(more(), share));
    }

    /**
     * The chance for a batch of known size, whose packs are drawn without putting any back.
     *
     * @param batch how many packs it holds, as many as the plan may weigh or more
     * @param shortOnes how many of them are short
     * @return from 0 to 1; accurate in both tails. Costs O(packs)
     * @throws IllegalArgumentException if there are more short ones than packs, or the plan weighs more than there are
     */
    public double inBatchOf(int batch, int shortOnes) {
        return chance(
                HypergeometricDistribution.of(batch, shortOnes, first().packs()),
                drawn -> HypergeometricDistribution.of(batch - first().packs(), shortOnes - drawn, more()));
    }

    private interface Second {
        DiscreteDistribution after(int drawn);
    }

    private SamplingStage first() {
        return stages.get(0);
    }

    private int more() {
        return stages.size() == 1 ? 0 : stages.get(1).packs() - first().packs();
    }

    private double chance(DiscreteDistribution drawnFirst, Second second) {
        double chance = drawnFirst.cumulativeProbability(whole(first().accept()));
        if (stages.size() == 1) {
            return chance;
        }
        IntToDoubleFunction passes = drawn ->
                second.after(drawn).cumulativeProbability(whole(stages.get(1).accept() - drawn));
        for (int drawn = whole(first().accept()) + 1; drawn < first().reject(); drawn++) {
            double p = drawnFirst.probability(drawn);
            chance += p == 0 ? 0 : p * passes.applyAsDouble(drawn);
        }
        return Math.min(1, chance);
    }

    private static int whole(long number) {
        return (int) Math.max(-1, Math.min(Integer.MAX_VALUE - 1L, number));
    }
}
