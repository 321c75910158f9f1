package dev.gambrel.yields.cuttingtest;

import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.reconciliation.error.Sidak;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * A part that was weighed, beside what a carcass of that weight should give. Nothing is reconciled here: a wrong reading shows at its own
 * part.
 *
 * @param node a line of the plan
 * @param weighed kilograms, with the error of the scale
 * @param expected kilograms, with the spread of the specification
 * @param isStated false where the specification says nothing of its share
 */
public record PartComparison(int node, Estimate weighed, Estimate expected, boolean isStated) {
    /**
     * Every part that was weighed but the carcass itself.
     *
     * @param test the sheet
     * @param expected what the carcass should give; of the same plan as the test
     * @return in the order of the plan
     */
    public static List<PartComparison> of(CuttingTest test, ExpectedYields expected) {
        double carcass = expected.given().mass().value();
        return IntStream.range(1, test.plan().size())
                .boxed()
                .flatMap(v -> test.reading(v).stream()
                        .map(reading -> new PartComparison(
                                v,
                                Estimate.of(reading.kilograms(), reading.variance()),
                                test.plan().weight(v).times(carcass),
                                test.plan().isStated(v))))
                .toList();
    }

    /**
     * Those that are further from what was expected than chance explains.
     *
     * @param all of one sheet
     * @param level the chance that any is named on a sheet where all is as the specification says, such as 0.05
     * @return in the same order
     */
    public static List<PartComparison> beyondChance(List<PartComparison> all, double level) {
        long tests = all.stream().filter(part -> part.z().isPresent()).count();
        double critical = Sidak.critical((int) Math.max(1, tests), level);
        return all.stream()
                .filter(part -> part.z().isPresent() && Math.abs(part.z().getAsDouble()) > critical)
                .toList();
    }

    /**
     * How much more was weighed than expected.
     *
     * @return kilograms, less than 0 where it was less; nothing where no share is stated
     */
    public OptionalDouble difference() {
        return isStated ? OptionalDouble.of(weighed.mean() - expected.mean()) : OptionalDouble.empty();
    }

    /**
     * The difference in standard deviations, those of the scale and of the specification taken together.
     *
     * @return standard normal where the carcass is as the specification says; nothing where no share or spread is stated
     */
    public OptionalDouble z() {
        double deviation =
                Math.sqrt(weighed.spread().variance() + expected.spread().variance());
        double z = (weighed.mean() - expected.mean()) / deviation;
        return isStated && Double.isFinite(z) ? OptionalDouble.of(z) : OptionalDouble.empty();
    }
}
