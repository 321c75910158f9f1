package dev.gambrel.yields.packs.rule;

/**
 * What is done when so many packs are weighed.
 *
 * @param packs how many are weighed by now, those of an earlier stage counted
 * @param accept the most that may be short for the batch to pass
 * @param reject the fewest that fail it, more than {@code accept}; what lies between asks for the next stage
 */
public record SamplingStage(int packs, long accept, long reject) {
    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if there are no packs, or {@code reject} is not more than {@code accept}
     */
    public SamplingStage {
        if (packs < 1 || accept < 0 || reject <= accept) {
            throw new IllegalArgumentException("no stage of a sampling plan");
        }
    }

    /**
     * A stage after which nothing more is weighed.
     *
     * @param packs how many are weighed by now
     * @param accept the most that may be short
     * @return a stage that fails a batch with one short pack more
     */
    public static SamplingStage last(int packs, long accept) {
        return new SamplingStage(packs, accept, accept + 1);
    }
}
