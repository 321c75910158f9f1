package dev.gambrel.conformance.published;

import java.math.BigDecimal;
import java.math.RoundingMode;

/** Figures rounded as tables in print round them. */
final class Printed {
    /** Weights are worked out to a relative 1e-12; what differs by less is the same half. */
    private static final int TRUE_PLACES = 9;

    private Printed() {}

    /** A figure rounded half up to as many places as a printed one has. */
    static String like(String printed, double worked) {
        int places = Math.max(0, new BigDecimal(printed).scale());
        return rounded(worked, places, RoundingMode.HALF_UP);
    }

    static String rounded(double worked, int places, RoundingMode mode) {
        return new BigDecimal(worked)
                .setScale(TRUE_PLACES, RoundingMode.HALF_EVEN)
                .setScale(places, mode)
                .toPlainString();
    }
}
