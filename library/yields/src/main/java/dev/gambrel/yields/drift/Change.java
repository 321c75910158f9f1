package dev.gambrel.yields.drift;

import java.util.List;

/**
 * Where figures moved most from one level to another: the point at which what they are above or below their mean, summed up, is furthest
 * from nothing (E. S. Page, "A test for a change in a parameter occurring at an unknown point", Biometrika 42, 1955). There is one such point
 * whether they moved or not.
 *
 * @param first how many figures stand before it, 1 or more
 * @param before their mean
 * @param after the mean of the others
 */
record Change(int first, double before, double after) {
    /** Of 2 figures or more. */
    static Change of(List<Double> values) {
        double mean = mean(values);
        double sum = 0;
        double furthest = -1;
        int first = 1;
        for (int i = 0; i < values.size() - 1; i++) {
            sum += values.get(i) - mean;
            if (Math.abs(sum) > furthest) {
                furthest = Math.abs(sum);
                first = i + 1;
            }
        }
        return new Change(first, mean(values.subList(0, first)), mean(values.subList(first, values.size())));
    }

    private static double mean(List<Double> values) {
        return values.stream().mapToDouble(value -> value).average().orElseThrow();
    }
}
