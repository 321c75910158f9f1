package dev.gambrel.reports.picture;

import dev.gambrel.yields.cuttingtest.WhereItWent;
import dev.gambrel.yields.cuttingtest.WhereItWent.Share;
import dev.gambrel.yields.table.LargestRemainder;
import java.util.ArrayList;
import java.util.List;

/** One sort of what a carcass gave, in whole grams that add up to the whole carcass. */
record Grams(String words, long expected, long actual, boolean isStated) {
    private static final double PER_KILOGRAM = 1000;
    private static final String NOTHING = "-";

    /** Where all is stated the differences add up to 0; else what is stated is rounded on its own. */
    static List<Grams> of(WhereItWent went) {
        List<Share> shares = went.shares();
        double[] actual = shares.stream()
                .mapToDouble(share -> share.kilograms() * PER_KILOGRAM)
                .toArray();
        double[] expected = shares.stream()
                .mapToDouble(share -> share.expected() * PER_KILOGRAM)
                .toArray();
        long[] actualGrams = LargestRemainder.apportion(actual, rounded(actual));
        boolean isAllStated = shares.stream().allMatch(Share::isStated);
        long[] expectedGrams = LargestRemainder.apportion(expected, rounded(isAllStated ? actual : expected));
        List<Grams> grams = new ArrayList<>();
        for (int i = 0; i < shares.size(); i++) {
            Share share = shares.get(i);
            grams.add(new Grams(share.sort().words(), expectedGrams[i], actualGrams[i], share.isStated()));
        }
        return grams;
    }

    private static long rounded(double... grams) {
        double sum = 0;
        for (double each : grams) {
            sum += each;
        }
        return Math.round(sum);
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
