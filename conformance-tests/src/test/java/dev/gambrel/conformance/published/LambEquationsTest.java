package dev.gambrel.conformance.published;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lamb yield grade and cutability, and retail cuts from group means of 64 lambs. */
class LambEquationsTest {
    private static final String VIRGINIA = "LAMBYGVA, Virginia, Yield Grades and Quality Grades for Lamb Carcasses";
    private static final String MARYLAND = "LAMBUMD, University of Maryland, raw carcass data 2019";

    private final CatalogueEquations lamb = CatalogueEquations.of("lamb equations");

    /** The fat that gives a yield grade. */
    private static String fatOf(String grade) {
        BigDecimal fat = new BigDecimal(grade).subtract(new BigDecimal("0.4")).divide(BigDecimal.TEN);
        return "fat thickness = " + fat.toPlainString() + " in";
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            1.0, 51.0
            1.5, 50.35
            2.0, 49.7
            2.5, 49.05
            3.0, 48.4
            3.5, 47.75
            4.0, 47.1
            4.5, 46.45
            5.0, 45.8
            """)
    void every_row_of_the_cutability_table_but_the_last_is_exact(String grade, String cutability) {
        assertEquals(
                new BigDecimal(cutability).stripTrailingZeros(), lamb.exact("lamb cutability", fatOf(grade)), VIRGINIA);
    }

    @Test
    void the_last_row_is_printed_as_5_9_where_5_5_gives_its_45_15() {
        assertEquals("45.15", lamb.exact("lamb cutability", fatOf("5.5")).toPlainString(), VIRGINIA);
        assertEquals("44.63", lamb.exact("lamb cutability", fatOf("5.9")).toPlainString(), VIRGINIA);
    }

    /** Each grade reaches up to so much fat; the first hundredth of an inch above belongs to the next. */
    @ParameterizedTest
    @CsvSource({"0.15, 1", "0.16, 2", "0.25, 2", "0.26, 3", "0.35, 3", "0.36, 4", "0.45, 4", "0.46, 5"})
    void decimals_dropped_put_the_fat_limits_of_the_standard_where_they_are_printed(String fat, String grade) {
        String source = "standard for slaughter lambs: up to 0.15, 0.25, 0.35 and 0.45 inches for grades 1 to 4";
        assertEquals(
                grade,
                lamb.exact("official lamb yield grade", "fat thickness = " + fat + " in")
                        .toPlainString(),
                source);
    }

    @ParameterizedTest
    @CsvSource({"rams, 0.083, 1.23", "short-scrotum, 0.100, 1.40", "wethers, 0.142, 1.82", "all, 0.111, 1.51"})
    void the_mean_yield_grade_of_a_group_follows_from_its_mean_fat(String group, String fat, String grade) {
        assertEquals(
                grade,
                lamb.printed(grade, "lamb yield grade", "fat thickness = " + fat + " in"),
                MARYLAND + ", " + group);
    }

    /** The intercept is from memory; that the equation holds on all four group means within 0.01 point confirms it. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            rams, 63.0, 0.083, 0.529, 3.01, 49.75
            short-scrotum, 60.7, 0.100, 0.514, 2.83, 49.48
            wethers, 58.6, 0.142, 0.558, 2.71, 49.04
            all, 60.6, 0.111, 0.536, 2.84, 49.40
            """)
    void the_mean_retail_cuts_of_a_group_follow_from_its_means_within_a_hundredth(
            String group, String weight, String fat, String wall, String ribeye, String retailCuts) {
        BigDecimal worked = lamb.exact(
                "lamb retail cuts",
                "hot carcass weight = " + weight + " lb",
                "fat thickness = " + fat + " in",
                "body wall thickness = " + wall + " in",
                "ribeye area = " + ribeye + " in²");
        BigDecimal off = worked.subtract(new BigDecimal(retailCuts)).abs();
        assertTrue(off.compareTo(new BigDecimal("0.01")) <= 0, MARYLAND + ", " + group + ": " + worked);
    }
}
