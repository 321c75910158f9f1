package dev.gambrel.reports.picture;

import dev.gambrel.yields.cuttingtest.WhereItWent;
import java.math.BigDecimal;
import java.util.List;

/** One sort of what a carcass gave, in whole grams that add up to the whole carcass. */
record Grams(String words, long expected, long actual, boolean isStated) {
    /** Grams to a kilogram, as decimals. */
    private static final int PLACES = 3;

    private static final String NOTHING = "-";

    static List<Grams> of(WhereItWent went) {
        return went.rounded(PLACES).stream()
                .map(each -> new Grams(
                        each.sort().words(), grams(each.expected()), grams(each.kilograms()), each.isStated()))
                .toList();
    }

    private static long grams(BigDecimal kilograms) {
        return kilograms.movePointRight(PLACES).longValueExact();
    }

    static Grams total(List<Grams> rows) {
        return new Grams(
                "all",
                rows.stream().mapToLong(Grams::expected).sum(),
                rows.stream().mapToLong(Grams::actual).sum(),
                rows.stream().allMatch(Grams::isStated));
    }

    long least() {
        return isStated ? Math.min(expected, actual) : actual;
    }

    long most() {
        return isStated ? Math.max(expected, actual) : actual;
    }

    String expectedWords() {
        return isStated ? Long.toString(expected) : NOTHING;
    }

    String actualWords() {
        return Long.toString(actual);
    }

    String differenceWords() {
        long difference = actual - expected;
        return isStated ? (difference > 0 ? "+" : "") + difference : NOTHING;
    }

    String sentence() {
        return words + ": expected " + expectedWords() + " g, actual " + actualWords() + " g, difference "
                + differenceWords() + " g";
    }
}
