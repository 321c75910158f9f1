package dev.gambrel.yields.estimate;

import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.tree.estimate.Equation;

/**
 * What an equation gives for one carcass.
 *
 * @param equation the equation
 * @param value exactly what its arithmetic gives, or where that has no end the nearest decimal of 34 digits
 */
public record Estimated(Equation equation, Quantity value) {
    /**
     * The value with the residual spread of the equation.
     *
     * @return value and one standard deviation, or the value alone where no spread is stated
     */
    public Expected expected() {
        return equation.spread() instanceof Equation.Residual.Stated stated
                ? new Expected.PlusMinus(value, stated.deviation())
                : new Expected.Mean(value);
    }
}
