package dev.gambrel.yields.packs.rule;

import java.math.BigDecimal;

/** What is done with batches that are too small for a sample. */
public sealed interface SmallBatches {
    /**
     * All packs are weighed.
     *
     * @param upTo the largest batch that is weighed whole
     * @param shortShare the share of the packs that may be under T1
     * @param mean where it is said that all are weighed and that the mean counts as it is
     * @param counts where the share stands
     */
    record AllWeighed(int upTo, BigDecimal shortShare, Citation mean, Citation counts) implements SmallBatches {}

    /** The rule says nothing of them. */
    record NotCovered() implements SmallBatches {}
}
