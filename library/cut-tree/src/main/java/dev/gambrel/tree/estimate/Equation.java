package dev.gambrel.tree.estimate;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import java.util.List;

/**
 * An estimate by equation: what a carcass is likely to give, from what was measured on it.
 *
 * @param name what the estimate is called
 * @param expression how it is worked out
 * @param told in which unit
 * @param held the carcasses that it holds for
 * @param adjustments what is done to the result, in this order
 * @param spread how far a carcass strays from it
 * @param sources names of the sources that it rests on
 */
public record Equation(
        TradeName name,
        Expression expression,
        Told told,
        List<Held> held,
        List<Adjustment> adjustments,
        Residual spread,
        List<TradeName> sources) {
    /** Copies the lists. */
    public Equation {
        held = List.copyOf(held);
        adjustments = List.copyOf(adjustments);
        sources = List.copyOf(sources);
    }

    /** In which unit the result is told. */
    public sealed interface Told {
        /**
         * In a unit that was written.
         *
         * @param unit the unit
         */
        record In(Unit unit) implements Told {}

        /** No unit was written: the result is told in the unit in which its dimension is compared. */
        record NotStated() implements Told {}
    }

    /** How far a carcass strays from what the equation gives. */
    public sealed interface Residual {
        /**
         * The residual standard deviation.
         *
         * @param deviation in the dimension of the result
         */
        record Stated(Quantity deviation) implements Residual {}

        /** None is written. That is not zero. */
        record NotStated() implements Residual {}
    }

    /**
     * A range that the equation was made for.
     *
     * @param of a measure or a carcass weight
     * @param range its readings
     */
    public record Held(TradeName of, ValidRange.Stated range) {}
}
