package dev.gambrel.yields.packs.rule;

import dev.gambrel.quantity.Quantity;
import java.util.List;
import java.util.Optional;

/**
 * A published test of batches of packs that all say the same weight.
 *
 * @param name what it is called in a sentence
 * @param tables how much a pack may lack; the first that takes the unit of the label counts
 * @param plans how many packs are weighed, by size of batch
 * @param smallBatches what is done with batches too small for a plan
 * @param largestBatch how many packs a batch may hold unless it is drawn at the end of the packing line, where the output of an hour
 *     is one batch
 * @param secondLimit whether none may be under T2
 * @param confidence the one-sided confidence behind the printed factors of the mean
 */
public record PackTest(
        String name,
        List<ToleranceTable> tables,
        List<SamplingPlan> plans,
        SmallBatches smallBatches,
        long largestBatch,
        SecondLimit secondLimit,
        double confidence) {
    /** Copies the lists. */
    public PackTest {
        tables = List.copyOf(tables);
        plans = List.copyOf(plans);
    }

    /**
     * How much a pack may lack.
     *
     * @param nominal the weight that its label says
     * @return the tolerance, or nothing where no table of the test holds for such a weight
     */
    public Optional<Tolerance> tolerance(Quantity nominal) {
        return tables.stream()
                .filter(table -> table.units().contains(nominal.unit()))
                .findFirst()
                .flatMap(table -> table.at(nominal));
    }

    /**
     * How a batch is judged.
     *
     * @param batch how many packs it holds
     * @return the plan, or nothing where the test says nothing of such a batch
     */
    public Optional<SamplingPlan> plan(long batch) {
        if (smallBatches instanceof SmallBatches.AllWeighed all && batch >= 1 && batch <= all.upTo()) {
            return Optional.of(SamplingPlan.ofAll((int) batch, all.shortShare(), all.mean(), all.counts()));
        }
        return plans.stream().filter(plan -> plan.batches().hold(batch)).findFirst();
    }
}
