package dev.gambrel.yields.packs;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.yields.packs.rule.Citation;
import dev.gambrel.yields.packs.rule.MeanFactor;
import dev.gambrel.yields.packs.rule.PackRule;
import dev.gambrel.yields.packs.rule.SamplingStage;

/** What one rule says of a batch: the figure found, the limit, and how much is left between. */
public sealed interface RuleResult {
    /**
     * Which rule.
     *
     * @return the mean, T1 or T2
     */
    PackRule rule();

    /**
     * What it says.
     *
     * @return the answer, from exact figures
     */
    Answer answer();

    /**
     * Where the limit stands.
     *
     * @return the source
     */
    Citation citation();

    /**
     * The mean of the packs against the least that is accepted. Figures are rounded to 34 digits; the answer is not taken
     * from them.
     *
     * @param found the mean
     * @param limit the nominal quantity less the factor times the standard deviation
     * @param margin the mean less the limit; below 0 where the rule is broken
     * @param factor by how many standard deviations the mean may fall short
     * @param answer what the rule says
     */
    record Mean(Quantity found, Quantity limit, Quantity margin, MeanFactor factor, Answer answer)
            implements RuleResult {
        @Override
        public PackRule rule() {
            return PackRule.MEAN;
        }

        @Override
        public Citation citation() {
            return factor.citation();
        }
    }

    /**
     * How many packs are under a limit, against how many may be.
     *
     * @param rule T1 or T2
     * @param under the limit; a pack that weighs exactly so much is not under it
     * @param found how many are under it
     * @param stage how many may be, and how many fail the batch
     * @param citation where that stands
     */
    record Count(PackRule rule, Quantity under, long found, SamplingStage stage, Citation citation)
            implements RuleResult {
        @Override
        public Answer answer() {
            if (found <= stage.accept()) {
                return Answer.ACCEPT;
            }
            return found >= stage.reject() ? Answer.REJECT : Answer.SECOND_SAMPLE;
        }

        /**
         * How many more might be under the limit.
         *
         * @return below 0 where more are than may be
         */
        public long margin() {
            return stage.accept() - found;
        }
    }
}
