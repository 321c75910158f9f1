package dev.gambrel.yields;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Basis;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Spread;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.Collections;
import java.util.Comparator;
import java.util.List;

/** Carcasses that are cut by one specification, 1 or more, all weighed on one basis. */
public sealed interface CarcassLot {
    /**
     * Carcasses of one weight.
     *
     * @param number how many
     * @param each what each of them weighs, exactly
     * @return the carcasses
     * @throws IllegalArgumentException if there are none
     */
    static CarcassLot alike(int number, CarcassWeight each) {
        return new Alike(number, each, Spread.NONE);
    }

    /**
     * Carcasses that are not weighed yet, independent of one another and of how they cut.
     *
     * @param number how many
     * @param each the weight expected of each
     * @param basis what they will be weighed as
     * @return the carcasses; where the weight is written without a spread nobody has said how far it strays
     * @throws IllegalArgumentException if there are none, or it is no weight
     */
    static CarcassLot expected(int number, Expected each, Basis basis) {
        Quantity mean = new Quantity(each.measuring(Dimension.WEIGHT).exactMean(), Unit.KILOGRAM);
        return new Alike(
                number, new CarcassWeight(mean, basis), Estimate.of(each).spread());
    }

    /**
     * Carcasses that were weighed.
     *
     * @param weights what each of them weighs
     * @return the carcasses
     * @throws IllegalArgumentException if there are none, or they were weighed on different bases
     */
    static CarcassLot weighed(List<CarcassWeight> weights) {
        return new Weighed(weights);
    }

    /**
     * How many there are.
     *
     * @return 1 or more
     */
    int number();

    /**
     * One of mean weight.
     *
     * @return its weight and basis
     */
    CarcassWeight mean();

    /**
     * The lightest, as far as that is known.
     *
     * @return its weight, or the mean of weights that are only expected
     */
    CarcassWeight lightest();

    /**
     * The heaviest, as far as that is known.
     *
     * @return its weight, or the mean of weights that are only expected
     */
    CarcassWeight heaviest();

    /**
     * The sum of the squares of their mean weights.
     *
     * @return kilograms squared
     */
    double squares();

    /**
     * The variance of their weight together.
     *
     * @return kilograms squared, NaN where not stated
     */
    double variance();

    /**
     * Their weight together.
     *
     * @return kilograms; the spread is that of weights that are only expected
     */
    default Estimate kilograms() {
        return Estimate.of(number() * mean().mass().value(), variance());
    }

    /**
     * Carcasses of one weight.
     *
     * @param number how many
     * @param each what each weighs, at its mean
     * @param spread how far the weight of each strays, by itself
     */
    record Alike(int number, CarcassWeight each, Spread spread) implements CarcassLot {
        /**
         * Checks that there is one.
         *
         * @throws IllegalArgumentException if there are none
         */
        public Alike {
            if (number < 1) {
                throw new IllegalArgumentException("not a number of carcasses: " + number);
            }
        }

        @Override
        public CarcassWeight mean() {
            return each;
        }

        @Override
        public CarcassWeight lightest() {
            return each;
        }

        @Override
        public CarcassWeight heaviest() {
            return each;
        }

        @Override
        public double squares() {
            return number * Math.pow(each.mass().value(), 2);
        }

        @Override
        public double variance() {
            return number * spread.variance();
        }
    }

    /**
     * Carcasses that were weighed, exactly.
     *
     * @param weights of each
     */
    record Weighed(List<CarcassWeight> weights) implements CarcassLot {
        /**
         * Copies the list and checks it.
         *
         * @throws IllegalArgumentException if there are none, or they were weighed on different bases
         */
        public Weighed {
            weights = List.copyOf(weights);
            long bases = weights.stream().map(CarcassWeight::basis).distinct().count();
            if (bases != 1) {
                throw new IllegalArgumentException("carcasses are weighed on one basis, not on " + bases);
            }
        }

        @Override
        public int number() {
            return weights.size();
        }

        @Override
        public CarcassWeight mean() {
            BigDecimal sum = weights.stream().map(w -> w.mass().common()).reduce(BigDecimal.ZERO, BigDecimal::add);
            Quantity mean =
                    new Quantity(sum.divide(BigDecimal.valueOf(number()), MathContext.DECIMAL128), Unit.KILOGRAM);
            return new CarcassWeight(mean, weights.get(0).basis());
        }

        @Override
        public CarcassWeight lightest() {
            return Collections.min(weights, Comparator.comparing(CarcassWeight::mass));
        }

        @Override
        public CarcassWeight heaviest() {
            return Collections.max(weights, Comparator.comparing(CarcassWeight::mass));
        }

        @Override
        public double squares() {
            return weights.stream()
                    .mapToDouble(w -> Math.pow(w.mass().value(), 2))
                    .sum();
        }

        @Override
        public double variance() {
            return 0;
        }
    }
}
