package dev.gambrel.yields.cuttingtest.wording;

import dev.gambrel.quantity.ShownFigure;
import java.math.BigDecimal;
import java.util.OptionalDouble;

/** Figures as they are read: rounded to the nearest, to the even one of two. */
public final class Written {
    /** Decimals of a weight in kilograms to the gram. */
    public static final int GRAMS = 3;

    private static final double HUNDRED = 100;
    /** What stands where a figure is not known. */
    public static final String NOTHING = "-";

    private Written() {}

    /**
     * A figure.
     *
     * @param value any finite figure
     * @param places decimals
     * @return plain, never "-0"
     */
    public static String decimals(double value, int places) {
        return ShownFigure.of(value, places);
    }

    /**
     * A weight to the gram.
     *
     * @param kilograms the weight
     * @return for example "4.020"
     */
    public static String kilograms(double kilograms) {
        return decimals(kilograms, GRAMS);
    }

    /**
     * A difference of weights to the gram, with its sign.
     *
     * @param kilograms the difference
     * @return for example "+0.315"; nothing before 0
     */
    public static String more(double kilograms) {
        return ShownFigure.signed(kilograms, GRAMS);
    }

    /**
     * A difference of weights that may not be known.
     *
     * @param kilograms the difference
     * @return as for one that is; a dash where it is not
     */
    public static String more(OptionalDouble kilograms) {
        return kilograms.isPresent() ? more(kilograms.getAsDouble()) : NOTHING;
    }

    /**
     * A number of standard deviations, with its sign.
     *
     * @param z the number
     * @return for example "-1.4"
     */
    public static String deviations(double z) {
        return ShownFigure.signed(z, 1);
    }

    /**
     * A number of standard deviations that may not be known.
     *
     * @param z the number
     * @return as for one that is; a dash where it is not
     */
    public static String deviations(OptionalDouble z) {
        return z.isPresent() ? deviations(z.getAsDouble()) : NOTHING;
    }

    /**
     * A share in per cent.
     *
     * @param share a part of 1
     * @return for example "21.05"
     */
    public static String percent(double share) {
        return decimals(HUNDRED * share, 2);
    }

    /**
     * A standard deviation of a weight to the gram.
     *
     * @param variance in square kilograms; NaN where it is not stated
     * @return for example "±0.004"; nothing where it is not known
     */
    public static String deviation(double variance) {
        return deviation(variance, GRAMS);
    }

    /**
     * A standard deviation.
     *
     * @param variance its square; NaN where it is not stated
     * @param places decimals
     * @return for example "±0.35"; nothing where it is not known
     */
    public static String deviation(double variance, int places) {
        return Double.isNaN(variance) ? "" : "±" + decimals(Math.sqrt(variance), places);
    }

    /**
     * A difference that is rounded already, with its sign.
     *
     * @param figure the difference
     * @return with all its decimals, for example "+0.35"; nothing before 0
     */
    public static String signed(BigDecimal figure) {
        return ShownFigure.signed(figure.doubleValue(), figure.scale());
    }

    /**
     * How many of so many, in words that need no exponent.
     *
     * @param probability from 0 to 1
     * @return for example "31 in 100"
     */
    public static String chance(double probability) {
        if (probability >= 0.01) {
            return decimals(HUNDRED * probability, 0) + " in 100";
        }
        return probability >= 0.0001 ? decimals(10_000 * probability, 0) + " in 10,000" : "fewer than 1 in 10,000";
    }
}
