package dev.gambrel.cli.balance;

import dev.gambrel.quantity.ShownFigure;
import java.util.OptionalDouble;

/** Figures as they are read: rounded to the nearest, to the even one of two. */
final class Written {
    private static final int GRAMS = 3;
    private static final double HUNDRED = 100;
    private static final String NOTHING = "-";

    private Written() {}

    static String decimals(double value, int places) {
        return ShownFigure.of(value, places);
    }

    static String kilograms(double kilograms) {
        return decimals(kilograms, GRAMS);
    }

    static String more(double kilograms) {
        return ShownFigure.signed(kilograms, GRAMS);
    }

    static String more(OptionalDouble kilograms) {
        return kilograms.isPresent() ? more(kilograms.getAsDouble()) : NOTHING;
    }

    static String deviations(double z) {
        return ShownFigure.signed(z, 1);
    }

    static String deviations(OptionalDouble z) {
        return z.isPresent() ? deviations(z.getAsDouble()) : NOTHING;
    }

    static String percent(double share) {
        return decimals(HUNDRED * share, 2);
    }

    /** "±0.004"; nothing where it is not known. */
    static String deviation(double variance) {
        return Double.isNaN(variance) ? "" : "±" + kilograms(Math.sqrt(variance));
    }

    /** How many of so many, in words that need no exponent. */
    static String chance(double probability) {
        if (probability >= 0.01) {
            return decimals(HUNDRED * probability, 0) + " in 100";
        }
        return probability >= 0.0001 ? decimals(10_000 * probability, 0) + " in 10,000" : "fewer than 1 in 10,000";
    }
}
