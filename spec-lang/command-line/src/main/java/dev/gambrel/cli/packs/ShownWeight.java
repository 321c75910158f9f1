package dev.gambrel.cli.packs;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/**
 * Weights of packs in print, to about a hundredth of a gram.
 *
 * @param unit the unit of the label
 */
record ShownWeight(Unit unit) {
    private int decimals() {
        return switch (unit) {
            case KILOGRAM -> 5;
            case POUND -> 4;
            case OUNCE -> 3;
            default -> 2;
        };
    }

    private BigDecimal rounded(BigDecimal kilograms) {
        return kilograms.divide(unit.factor(), MathContext.DECIMAL128).setScale(decimals(), RoundingMode.HALF_EVEN);
    }

    String of(Quantity weight) {
        return of(weight.common());
    }

    String of(double kilograms) {
        return of(new BigDecimal(kilograms));
    }

    String of(BigDecimal kilograms) {
        return rounded(kilograms).toPlainString() + " " + unit.symbol();
    }

    /** What is left or lacking; a difference too small to be seen is never shown as none. */
    String gap(Quantity margin) {
        BigDecimal gap = margin.common();
        String side = gap.signum() < 0 ? " short" : " over";
        return gap.signum() != 0 && rounded(gap).signum() == 0
                ? "under " + BigDecimal.ONE.movePointLeft(decimals()).toPlainString() + " " + unit.symbol() + side
                : of(gap.abs()) + side;
    }
}
