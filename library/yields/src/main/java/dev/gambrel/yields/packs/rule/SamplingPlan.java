package dev.gambrel.yields.packs.rule;

import java.math.BigDecimal;
import java.util.List;

/**
 * How a batch of a certain size is judged: how many packs are weighed, how many may be short, and how far their mean.
 *
 * @param batches the sizes of batch that it is for
 * @param stages one for single sampling, two for double; packs are counted together
 * @param factor what is printed for the mean
 * @param counts where the numbers of the stages stand
 */
public record SamplingPlan(Batches batches, List<SamplingStage> stages, MeanFactor factor, Citation counts) {
    /**
     * Sizes of batch.
     *
     * @param from the smallest
     * @param to the largest
     */
    public record Batches(long from, long to) {
        /**
         * Sizes without an upper end.
         *
         * @param from the smallest
         * @return all from there
         */
        public static Batches from(long from) {
            return new Batches(from, Long.MAX_VALUE);
        }

        boolean hold(long size) {
            return from <= size && size <= to;
        }
    }

    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException if there is no stage
     */
    public SamplingPlan {
        stages = List.copyOf(stages);
        if (stages.isEmpty()) {
            throw new IllegalArgumentException("a plan has a stage");
        }
    }

    /**
     * The plan for a batch of which every pack is weighed: the mean counts as it is, and a share of the packs may be short.
     *
     * @param packs how many there are
     * @param share the share that may be short, from 0 to 1
     * @param mean where it is said that the mean counts as it is
     * @param counts where the share stands
     * @return a plan for such a batch alone
     */
    public static SamplingPlan ofAll(int packs, BigDecimal share, Citation mean, Citation counts) {
        long accept = share.multiply(BigDecimal.valueOf(packs)).longValue();
        return new SamplingPlan(
                new Batches(packs, packs),
                List.of(SamplingStage.last(packs, accept)),
                new MeanFactor(BigDecimal.ZERO, packs, mean),
                counts);
    }
}
