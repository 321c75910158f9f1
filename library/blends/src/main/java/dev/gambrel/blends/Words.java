package dev.gambrel.blends;

import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;

/** Figures in sentences: as many places as are needed, and no more than the scale shows. */
final class Words {
    /** What is smaller than the last place shown still tells that it is not nothing. */
    private static final MathContext TWO_DIGITS = new MathContext(2);

    private Words() {}

    static String kilograms(double kilograms) {
        return rounded(kilograms, 3) + " kg";
    }

    static String percent(double percent) {
        return rounded(percent, 2) + " %";
    }

    static String points(double points) {
        return rounded(points, 2) + (points == 1 ? " point" : " points");
    }

    private static String rounded(double value, int places) {
        BigDecimal exact = BigDecimal.valueOf(value);
        boolean small = Math.abs(value) < Math.pow(10, -places);
        BigDecimal figure = small ? exact.round(TWO_DIGITS) : exact.setScale(places, RoundingMode.HALF_EVEN);
        return figure.signum() == 0 ? "0" : figure.stripTrailingZeros().toPlainString();
    }
}
