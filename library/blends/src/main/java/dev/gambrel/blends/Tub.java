package dev.gambrel.blends;

import dev.gambrel.text.TradeName;
import dev.gambrel.tree.term.Judged;
import dev.gambrel.yields.lean.Lean;

/**
 * A lot of trim that is there to be blended.
 *
 * @param name what it is called
 * @param lean how lean it is, judged by eye or by analysis
 * @param kilograms how much of it there is, more than nothing
 * @param price what a kilogram of it costs
 */
public record Tub(TradeName name, Lean lean, double kilograms, Price price) {
    /**
     * Checks the weight, and that the lean says how it is judged.
     *
     * @throws IllegalArgumentException if there is nothing in it, or nobody says whether the lean is visual or chemical
     */
    public Tub {
        if (!(kilograms > 0 && kilograms < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a tub holds more than nothing, not " + kilograms + " kg");
        }
        if (lean.judged() == Judged.NOT_STATED) {
            throw new IllegalArgumentException(name + " does not say whether its lean is visual or chemical");
        }
    }

    double percent() {
        return lean.percent().mean();
    }
}
