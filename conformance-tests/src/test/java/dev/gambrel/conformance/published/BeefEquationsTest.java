package dev.gambrel.conformance.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.math.BigDecimal;
import java.math.RoundingMode;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Beef yield grade, 7 CFR 54.105, with worked examples of North Dakota State University, and retail cuts. */
class BeefEquationsTest {
    private static final String NDSU = "NDSUYG, North Dakota State University, Yield Grades of Carcasses";
    private static final String CFR = "CFRBEEF, 7 CFR 54.105";
    private static final String BANDS = "BCTRCBAND, bands of retail cuts by yield grade";
    private static final String[] NDSU_CARCASS = carcass("0.40", "2.5", "750", "12.8");

    private final CatalogueEquations beef = CatalogueEquations.of("beef equations");

    private static String[] carcass(String fat, String kidney, String weight, String ribeye) {
        return new String[] {
            "fat thickness = " + fat + " in",
            "kidney pelvic and heart fat = " + kidney + " %",
            "hot carcass weight = " + weight + " lb",
            "ribeye area = " + ribeye + " in²"
        };
    }

    @Test
    void the_worked_example_gives_its_printed_2_75_and_its_official_grade_2() {
        assertEquals("2.75", beef.printed("2.75", "beef yield grade", NDSU_CARCASS), NDSU);
        assertEquals("2.754", beef.exact("beef yield grade", NDSU_CARCASS).toPlainString());
        assertEquals("2", beef.exact("official beef yield grade", NDSU_CARCASS).toPlainString(), NDSU);
    }

    /** The regulation gives these two as near the borderline of grades 1 and 2, and prints no result. */
    @ParameterizedTest
    @CsvSource({"0.3, 500, 11.5, 1.97", "0.4, 800, 16.0, 1.92"})
    void the_two_carcasses_of_the_regulation_lie_just_below_the_borderline(
            String fat, String weight, String ribeye, String grade) {
        String[] carcass = carcass(fat, "2.5", weight, ribeye);
        assertEquals(grade, beef.exact("beef yield grade", carcass).toPlainString(), CFR);
        assertEquals("1", beef.exact("official beef yield grade", carcass).toPlainString(), CFR);
    }

    @Test
    void a_page_of_low_authority_agrees_to_its_printed_place() {
        String[] carcass = carcass("0.92", "3.0", "972", "10.3");
        assertEquals("5.8", beef.printed("5.8", "beef yield grade", carcass), "a homework page, low authority");
        assertEquals("5", beef.exact("official beef yield grade", carcass).toPlainString(), "grades end at 5");
    }

    @Test
    void decimals_are_dropped_and_never_rounded() {
        // 2.50 + 1.00 + 0.50 + 2.85 - 0.32 x 12.1 = 2.978
        String[] carcass = carcass("0.40", "2.5", "750", "12.1");
        assertEquals("2.978", beef.exact("beef yield grade", carcass).toPlainString());
        assertEquals("2", beef.exact("official beef yield grade", carcass).toPlainString(), NDSU);
    }

    /** A ribeye chosen so that the grade is a whole number exactly: 0.32 per square inch divides by no inch in mm. */
    @ParameterizedTest
    @CsvSource({"15.15625, 2", "15.15626, 1", "12.03125, 3", "12.03126, 2"})
    void a_grade_that_lies_on_its_boundary_lies_on_it_in_millimetres_too(String ribeye, String official) {
        String[] carcass = carcass("0.40", "2.5", "750", ribeye);
        assertEquals(official, beef.exact("official beef yield grade", carcass).toPlainString(), CFR);
    }

    /** Boundaries between grades 1 to 5. */
    @ParameterizedTest
    @CsvSource({"2, 52.3", "3, 50.0", "4, 47.7", "5, 45.4"})
    void the_line_of_retail_cuts_meets_the_four_printed_boundaries(String grade, String retailCuts) {
        BigDecimal ribeye =
                new BigDecimal("6.85").subtract(new BigDecimal(grade)).divide(new BigDecimal("0.32"));
        String[] carcass = carcass("0.40", "2.5", "750", ribeye.toPlainString());
        assertEquals(grade, beef.exact("beef yield grade", carcass).toPlainString());
        assertEquals(retailCuts, beef.printed(retailCuts, "beef retail cuts by grade", carcass), BANDS);
    }

    /** Coefficients from memory: no print to check them against; they agree with the printed bands within half a point. */
    @Test
    void the_remembered_retail_cuts_equation_agrees_with_the_printed_bands_within_half_a_point() {
        BigDecimal remembered = beef.exact("beef retail cuts", NDSU_CARCASS);
        BigDecimal byGrade = beef.exact("beef retail cuts by grade", NDSU_CARCASS);
        assertEquals("50.368", remembered.setScale(3, RoundingMode.HALF_UP).toPlainString(), "worked out by hand");
        assertEquals("50.566", byGrade.setScale(3, RoundingMode.HALF_UP).toPlainString(), "worked out by hand");
        assertEquals(-1, remembered.subtract(byGrade).abs().compareTo(new BigDecimal("0.5")));
    }

    @ParameterizedTest
    @CsvSource(textBlock = """
            chuck, 122, 142, 162
            rib, 38, 44, 50
            loin, 67, 78, 90
            round, 92, 108, 123
            brisket plate and flank, 80, 93, 106
            miscellaneous, 21, 25, 28
            """)
    void take_home_pounds_of_600_700_and_800_pound_carcasses_are_the_printed_ones(
            String primal, String of600, String of700, String of800) {
        String source = "BEEFMSU, Michigan State University Extension, freezer beef, part two";
        String estimate = "take-home " + primal;
        assertEquals(of600, beef.printed(of600, estimate, "hot carcass weight = 600 lb"), source);
        assertEquals(of700, beef.printed(of700, estimate, "hot carcass weight = 700 lb"), source);
        assertEquals(of800, beef.printed(of800, estimate, "hot carcass weight = 800 lb"), source);
    }
}
