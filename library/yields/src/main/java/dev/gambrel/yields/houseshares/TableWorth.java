package dev.gambrel.yields.houseshares;

import java.util.List;

/**
 * How many cutting tests of its own a house should trade a published table for. One number for all parts: with one for each the
 * shares would no longer close.
 *
 * <p>It is the variance within a house over that between houses (H. Bühlmann, "Experience rating and credibility", ASTIN Bulletin 4,
 * 1967, from memory).
 *
 * @param tests 0 or more: 0 where the table counts nothing, infinite where the tests count nothing
 */
public record TableWorth(double tests) {
    /**
     * Checks the number.
     *
     * @throws IllegalArgumentException if it is below 0 or no number
     */
    public TableWorth {
        if (!(tests >= 0)) {
            throw new IllegalArgumentException("a table is worth 0 tests or more, not " + tests);
        }
    }

    /**
     * What tests of a house weigh beside the table: n / (n + κ).
     *
     * @param number how many there are, more than 0
     * @return from 0 to 1
     */
    public double ownWeight(double number) {
        return number / (number + tests);
    }

    /**
     * Estimated from tests of several houses, all parts together: the mean square within houses over the variance between them, which
     * is (Σn‖m − M‖² − (H − 1) v) / (N − Σn² / N) for H houses of n tests, N in all, with means m, their mean M and the mean square v
     * within (H. Bühlmann and E. Straub, "Glaubwürdigkeit für Schadensätze", 1970, from memory). All tests count alike.
     *
     * @param houses 2 or more that cut to the same parts, one of them with 2 tests or more
     * @return what a table that is the mean of such houses is worth; infinite where the houses do not differ beyond what chance makes
     *     of their tests
     * @throws IllegalArgumentException if there are fewer houses or tests, or the parts are not the same
     */
    public static TableWorth fromHouses(List<CutTests> houses) {
        int all = houses.stream().mapToInt(house -> house.tests().size()).sum();
        boolean sameParts = houses.stream().map(CutTests::parts).distinct().count() == 1;
        if (houses.size() < 2 || all <= houses.size() || !sameParts) {
            throw new IllegalArgumentException(
                    "2 houses or more with the same parts, one of them with 2 tests or more");
        }
        int parts = houses.get(0).parts().size();
        double within = 0;
        double between = 0;
        for (int part = 0; part < parts; part++) {
            int p = part;
            double whole = houses.stream().mapToDouble(house -> sum(house, p)).sum() / all;
            for (CutTests house : houses) {
                double mean = sum(house, part) / house.tests().size();
                between += house.tests().size() * (mean - whole) * (mean - whole);
                within += house.tests().stream()
                        .mapToDouble(test -> Math.pow(test.share(p).mean() - mean, 2))
                        .sum();
            }
        }
        double variance = within / (all - houses.size());
        double squares = houses.stream()
                .mapToDouble(house -> Math.pow(house.tests().size(), 2))
                .sum();
        double ofHouses = (between - (houses.size() - 1) * variance) / (all - squares / all);
        return new TableWorth(ofHouses > 0 ? variance / ofHouses : Double.POSITIVE_INFINITY);
    }

    private static double sum(CutTests house, int part) {
        return house.tests().stream()
                .mapToDouble(test -> test.share(part).mean())
                .sum();
    }
}
