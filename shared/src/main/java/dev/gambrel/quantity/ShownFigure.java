package dev.gambrel.quantity;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** A figure as it is read: rounded to the nearest, to the even one of two, and nothing is never less than nothing. */
public final class ShownFigure {
    private ShownFigure() {}

    /**
     * Rounds a figure.
     *
     * @param value the figure
     * @param places after the point
     * @return for example "0.30"; "0.00" for what rounds to nothing from below
     * @throws NumberFormatException if the value is no number
     */
    public static String of(double value, int places) {
        BigDecimal rounded = new BigDecimal(value).setScale(places, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? rounded.abs().toPlainString() : rounded.toPlainString();
    }

    /**
     * Rounds a difference.
     *
     * @param value the difference
     * @param places after the point
     * @return for example "+0.30" or "-0.30"; no sign before what rounds to nothing
     * @throws NumberFormatException if the value is no number
     */
    public static String signed(double value, int places) {
        String figure = of(value, places);
        return figure.startsWith("-") || figure.chars().noneMatch(c -> c >= '1' && c <= '9') ? figure : "+" + figure;
    }
}
