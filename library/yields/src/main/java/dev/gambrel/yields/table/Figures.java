package dev.gambrel.yields.table;

import dev.gambrel.quantity.Unit;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Interval;
import dev.gambrel.yields.figure.Spread;
import java.math.BigDecimal;
import java.math.RoundingMode;

/**
 * Weights in the unit and to the place that were asked for.
 *
 * @param unit a unit of weight
 * @param decimals how many places after the point
 */
record Figures(Unit unit, int decimals) {
    static final int PERCENT_DECIMALS = 2;

    /** A weight in steps of the last place printed. */
    double steps(double kilograms) {
        return kilograms / unit.factor().doubleValue() * Math.pow(10, decimals);
    }

    String shown(long steps) {
        return BigDecimal.valueOf(steps, decimals).toPlainString();
    }

    String shown(double kilograms) {
        return shown(Math.round(steps(kilograms)));
    }

    /** One place finer than weights, since it is smaller. */
    String finer(double kilograms) {
        return new BigDecimal(kilograms / unit.factor().doubleValue())
                .setScale(decimals + 1, RoundingMode.HALF_EVEN)
                .toPlainString();
    }

    Line.Spreading spreading(Estimate estimate) {
        return estimate.spread() instanceof Spread.Stated s
                ? spreading(s, estimate.weightRange95().orElseThrow())
                : Line.Spreading.UNKNOWN;
    }

    private Line.Spreading spreading(Spread.Stated s, Interval range) {
        return new Line.Spreading(finer(s.standardDeviation()), shown(range.low()), shown(range.high()));
    }

    /** A number of pieces, which is whole unless only some are worked in a way. */
    static String number(double pieces) {
        return new BigDecimal(pieces)
                .setScale(2, RoundingMode.HALF_EVEN)
                .stripTrailingZeros()
                .toPlainString();
    }

    static double percentSteps(double percent) {
        return percent * Math.pow(10, PERCENT_DECIMALS);
    }

    static String percent(long steps) {
        return BigDecimal.valueOf(steps, PERCENT_DECIMALS).toPlainString();
    }
}
