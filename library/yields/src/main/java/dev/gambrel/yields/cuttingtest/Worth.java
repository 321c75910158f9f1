package dev.gambrel.yields.cuttingtest;

import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.reconciliation.Reconciled;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * What a carcass gave and what it should have given, in money.
 *
 * <p>A cut is valued by its parts where each of them that is no loss has a worth, by its own price or by its parts; otherwise whole at its
 * own price; and where it has none, by those of its parts that have one. So nothing is valued twice. Weights are those in balance; expected
 * ones are of the reconciled carcass. Standard deviations of what was weighed come from the scales, of what is expected from the
 * specification; both are taken as independent. Immutable.
 *
 * @param lines what is valued, from the top down
 * @param notUsed lines of the plan whose price is not used, since their parts or what they are cut from are valued
 * @param withoutPrice lines of the plan that are not valued, having no price, neither they nor anything below
 * @param notKnown lines of the plan that are not valued, since they have a price and their weight is not known
 * @param actual money, of all lines
 * @param expected money, of all lines; of no meaning where a line is not stated
 */
public record Worth(
        List<Line> lines,
        List<Integer> notUsed,
        List<Integer> withoutPrice,
        List<Integer> notKnown,
        Estimate actual,
        Estimate expected) {
    /** Copies the lists. */
    public Worth {
        lines = List.copyOf(lines);
        notUsed = List.copyOf(notUsed);
        withoutPrice = List.copyOf(withoutPrice);
        notKnown = List.copyOf(notKnown);
    }

    /**
     * What one part is worth.
     *
     * @param node a line of the plan
     * @param isWhole true if it has parts, and is valued as it enters the block
     * @param perKilogram its price
     * @param weight kilograms by the reconciled weights
     * @param expectedWeight kilograms
     * @param isStated false where the specification says nothing of its share, or the carcass is not known, so that nothing is expected
     */
    public record Line(
            int node,
            boolean isWhole,
            BigDecimal perKilogram,
            Estimate weight,
            Estimate expectedWeight,
            boolean isStated) {
        /**
         * What it fetches.
         *
         * @return money
         */
        public Estimate actual() {
            return weight.times(perKilogram.doubleValue());
        }

        /**
         * What it should fetch.
         *
         * @return money; nothing where nothing is expected
         */
        public Optional<Estimate> expected() {
            return isStated ? Optional.of(expectedWeight.times(perKilogram.doubleValue())) : Optional.empty();
        }

        /**
         * How much more it fetches than expected.
         *
         * @return money, less than 0 where it is less; nothing where nothing is expected
         */
        public Optional<Estimate> difference() {
            return expected().map(should -> less(actual(), should));
        }
    }

    /**
     * Values a sheet.
     *
     * @param test the sheet
     * @param prices of its parts; those of parts that the specification as worked does not have are left out
     * @return the worth
     * @throws IllegalArgumentException if a loss has a price, or a part has two
     */
    public static Worth of(CuttingTest test, List<PartPrice> prices) {
        Valuation valuation = new Valuation(test, prices);
        double carcass = test.reconciled().weight(0) instanceof Reconciled.Weight known
                ? known.estimate().mean()
                : Double.NaN;
        return new Worth(
                valuation.lines(carcass),
                valuation.notUsed(),
                valuation.withoutPrice(),
                valuation.notKnown(),
                test.reconciled().figure(valuation::coefficient),
                Double.isNaN(carcass)
                        ? Estimate.exactly(0)
                        : test.plan().figure(valuation::coefficient).times(carcass));
    }

    /**
     * Whether every line has an expectation, so that the whole has one.
     *
     * @return false where one has none
     */
    public boolean isStated() {
        return lines.stream().allMatch(Line::isStated);
    }

    /**
     * How much more all lines fetch than expected.
     *
     * @return money, less than 0 where it is less; nothing where nothing is expected of a line
     */
    public Optional<Estimate> difference() {
        return isStated() ? Optional.of(less(actual, expected)) : Optional.empty();
    }

    private static Estimate less(Estimate actual, Estimate expected) {
        return Estimate.of(
                actual.mean() - expected.mean(),
                actual.spread().variance() + expected.spread().variance());
    }
}
