package dev.gambrel.yields.comparison;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.WeightBand;
import dev.gambrel.yields.CarcassWeight;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.Outcome;
import dev.gambrel.yields.StreamYield;
import dev.gambrel.yields.YieldRow;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.portions.PortionYield;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * What one carcass should give by two specifications: kilograms of each line that is sold under its own name, of each stream
 * and of each outcome, and how many portions. Expected figures, exact but for the rounding of doubles; which change a
 * difference comes from is not said, since several meet in one line.
 *
 * @param carcass the carcass, the same for both
 * @param products what is sold under its own name, before portioning
 * @param streams each stream
 * @param outcomes each outcome
 * @param portions expected numbers from all pieces of the carcass
 */
public record YieldComparison(
        CarcassWeight carcass,
        List<AmountChange> products,
        List<AmountChange> streams,
        List<AmountChange> outcomes,
        List<AmountChange> portions) {
    private static final BigDecimal HALF = new BigDecimal("0.5");

    /** Copies the lists. */
    public YieldComparison {
        products = List.copyOf(products);
        streams = List.copyOf(streams);
        outcomes = List.copyOf(outcomes);
        portions = List.copyOf(portions);
    }

    /**
     * Compares what two specifications give of carcasses of one weight.
     *
     * @param before the yields by the earlier one
     * @param after the yields by the later one
     * @return what each line gives by both
     * @throws IllegalArgumentException if they are of carcasses of different weights
     */
    public static YieldComparison of(ExpectedYields before, ExpectedYields after) {
        CarcassWeight carcass = before.given();
        boolean same = carcass.basis() == after.given().basis()
                && carcass.mass().compareTo(after.given().mass()) == 0;
        if (!same) {
            throw new IllegalArgumentException("the carcasses differ: " + carcass + ", " + after.given());
        }
        return new YieldComparison(
                carcass,
                joined(products(before), products(after)),
                joined(streams(before), streams(after)),
                joined(outcomes(before), outcomes(after)),
                joined(portions(before), portions(after)));
    }

    /**
     * A carcass that both are written for.
     *
     * @param before one specification
     * @param after another
     * @return the middle of what their weight bands have in common; nothing where that is nothing, or where one is written for
     *     another basis or for no band
     */
    public static Optional<CarcassWeight> commonCarcass(CutTree before, CutTree after) {
        boolean sameBasis = before.carcass().basis() == after.carcass().basis();
        if (sameBasis
                && before.carcass().band() instanceof WeightBand.Stated one
                && after.carcass().band() instanceof WeightBand.Stated other) {
            Quantity low = one.low().compareTo(other.low()) >= 0 ? one.low() : other.low();
            Quantity high = one.high().compareTo(other.high()) <= 0 ? one.high() : other.high();
            return low.compareTo(high) <= 0
                    ? Optional.of(new CarcassWeight(
                            middle(low, high), before.carcass().basis()))
                    : Optional.empty();
        }
        return Optional.empty();
    }

    private static Quantity middle(Quantity low, Quantity high) {
        boolean alike = low.unit() == high.unit();
        BigDecimal sum = alike ? low.amount().add(high.amount()) : low.common().add(high.common());
        return new Quantity(sum.multiply(HALF).round(MathContext.DECIMAL128), alike ? low.unit() : Unit.KILOGRAM);
    }

    private static List<AmountChange> joined(Map<Key, Amount> before, Map<Key, Amount> after) {
        List<AmountChange> lines = new ArrayList<>();
        before.forEach((key, was) ->
                lines.add(new AmountChange(key.name(), was, after.getOrDefault(key, new Amount.NotThere()))));
        after.forEach((key, is) -> {
            if (!before.containsKey(key)) {
                lines.add(new AmountChange(key.name(), new Amount.NotThere(), is));
            }
        });
        return lines;
    }

    /** A line by what it is, with the name that it is shown by. */
    private record Key(Object of, String name) {
        @Override
        public boolean equals(Object other) {
            return other instanceof Key that && of.equals(that.of);
        }

        @Override
        public int hashCode() {
            return of.hashCode();
        }
    }

    private static Map<Key, Amount> products(ExpectedYields yields) {
        Map<Key, Amount> found = new LinkedHashMap<>();
        for (YieldRow row : yields.rows()) {
            if (row.home().filter(Home.Product.class::isInstance).isPresent()) {
                Optional<Double> mean = row.allPieces().map(Estimate::mean);
                found.put(
                        new Key(row.path(), row.path().toString()),
                        mean.<Amount>map(Amount.Of::new).orElseGet(Amount.NotStated::new));
            }
        }
        return found;
    }

    private static Map<Key, Amount> streams(ExpectedYields yields) {
        Map<Key, Amount> found = new LinkedHashMap<>();
        for (StreamYield stream : yields.streams()) {
            found.put(
                    new Key(stream.stream().name(), stream.stream().name().text()),
                    new Amount.Of(stream.weight().mean()));
        }
        return found;
    }

    private static Map<Key, Amount> outcomes(ExpectedYields yields) {
        Map<Key, Amount> found = new LinkedHashMap<>();
        for (Outcome outcome : Outcome.values()) {
            found.put(
                    new Key(outcome, outcome.words()),
                    new Amount.Of(yields.total(outcome).mean()));
        }
        return found;
    }

    private static Map<Key, Amount> portions(ExpectedYields yields) {
        Map<Key, Amount> found = new LinkedHashMap<>();
        for (PortionYield portion : PortionYield.of(yields)) {
            var path = portion.from().cut().then(portion.from().portion().name());
            OptionalDouble number = portion.expectedNumberFromAll();
            found.put(
                    new Key(path, path.toString()),
                    number.isPresent() ? new Amount.Of(number.getAsDouble()) : new Amount.NotStated());
        }
        return found;
    }
}
