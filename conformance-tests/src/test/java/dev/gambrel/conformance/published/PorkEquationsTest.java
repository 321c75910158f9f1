package dev.gambrel.conformance.published;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Pork carcass grade, fat-free lean, and the lean meat equations of Commission Decisions. */
class PorkEquationsTest {
    private static final String STANDARD = "USDAPORK, 7 CFR 53.153, and teaching slides with three examples";
    private static final String AMS = "USDAPORK, AMS, Pork Carcass Grades and Standards";
    private static final String BY_HAND =
            "worked out by hand from the published equation; no worked example is in print";
    private static final String[] HOG = {
        "hot carcass weight = 180 lb", "tenth rib fat = 0.8 in", "loin muscle area = 6.0 in²"
    };

    private final CatalogueEquations pork = CatalogueEquations.of("pork equations");

    private String score(String fat, String muscling) {
        return pork.exact("pork grade score", "last rib fat = " + fat + " in", "muscling = " + muscling)
                .toPlainString();
    }

    private String grade(String fat, String muscling) {
        return pork.exact("pork carcass grade", "last rib fat = " + fat + " in", "muscling = " + muscling)
                .toPlainString();
    }

    @ParameterizedTest
    @CsvSource({"0.9, average, 1.6, 1", "0.5, thin, 1, 2", "0.6, average, 0.4, 1"})
    void the_three_worked_examples_give_their_printed_score_and_grade(
            String fat, String muscling, String score, String grade) {
        assertEquals(score, score(fat, muscling), STANDARD);
        assertEquals(grade, grade(fat, muscling), STANDARD);
    }

    /** Under 1.00 in with average and under 1.25 in with thick muscling is No. 1; 1.25 to 1.49 in with thick is No. 2. */
    @ParameterizedTest
    @CsvSource({
        "0.99, average, 1",
        "1.00, average, 2",
        "1.24, average, 2",
        "1.25, average, 3",
        "1.24, thick, 1",
        "1.25, thick, 2",
        "1.49, thick, 2",
        "1.50, thick, 3",
        "0.99, thin, 2",
        "1.00, thin, 3"
    })
    void the_edges_that_the_standard_prints_fall_where_it_prints_them(String fat, String muscling, String grade) {
        assertEquals(grade, grade(fat, muscling), AMS);
    }

    @ParameterizedTest
    @CsvSource({"0.3, thin", "0.5, thin", "0.74, thin"})
    void thin_muscling_is_never_number_1(String fat, String muscling) {
        assertEquals("2", grade(fat, muscling), STANDARD);
    }

    @ParameterizedTest
    @CsvSource({"1.75, thick", "1.75, average", "3.0, thin"})
    void from_1_75_inches_on_it_stays_number_4(String fat, String muscling) {
        assertEquals("4", grade(fat, muscling), STANDARD);
    }

    @Test
    void fat_free_lean_of_a_ribbed_carcass() {
        assertEquals("92.8012", pork.exact("fat-free lean", HOG).toPlainString(), BY_HAND);
        assertEquals("51.556", pork.printed("51.556", "fat-free lean share", HOG), BY_HAND);
    }

    @Test
    void rounded_printings_agree_with_the_unrounded_equation_as_far_as_they_are_rounded() {
        // 8.6 - 17.52 + 90 + 18 = 99.08: the weight's 0.465 is printed as 0.5, which is 6.3 lb at 180 lb.
        assertEquals("99.08", pork.exact("fat-free lean ribbed", HOG).toPlainString(), BY_HAND);
        String[] unribbed = {"hot carcass weight = 180 lb", "last rib fat = 1.0 in"};
        assertEquals("92.4", pork.exact("fat-free lean unribbed", unribbed).toPlainString(), BY_HAND);
        String[] probed = {"hot carcass weight = 180 lb", "tenth rib fat = 0.8 in", "loin muscle depth = 2.0 in"};
        assertEquals("88.26", pork.exact("fat-free lean by probe", probed).toPlainString(), BY_HAND);
        assertEquals(
                "92.76",
                pork.exact("fat-free lean unribbed unrounded", unribbed).toPlainString(),
                "from memory");
    }

    @Test
    void fat_free_muscle_as_a_share_and_as_a_weight_are_two_regressions() {
        assertEquals("54.332", pork.exact("fat-free muscle share", HOG).toPlainString(), BY_HAND);
        assertEquals("96.286", pork.exact("fat-free muscle", HOG).toPlainString(), BY_HAND);
    }

    @Test
    void lean_meat_by_the_decisions_of_the_commission() {
        String weight = "hot carcass weight = 82 kg";
        String[] fatAndMuscle = {"back fat = 12 mm", "muscle depth = 55 mm"};
        // 53.25 - 14.8776 + 0.0139 x 144 + 17.2975
        assertEquals("57.6715", pork.exact("lean, Ireland 1993", fatAndMuscle).toPlainString(), BY_HAND);
        assertEquals("58.716", pork.exact("lean, Ireland 1994", fatAndMuscle).toPlainString(), BY_HAND);
        assertEquals(
                "62.27771",
                pork.exact("lean, Northern Ireland 2004", "P2 fat = 11 mm", weight)
                        .toPlainString(),
                BY_HAND);
        assertEquals(
                "63.178",
                pork.exact("lean, EU 2020", "back fat = 14 mm", "muscle depth = 60 mm", weight)
                        .toPlainString(),
                BY_HAND);
    }

    @Test
    void a_carcass_lighter_or_heavier_than_the_decision_says_is_reported() {
        String estimate = "lean, Northern Ireland 2004";
        assertEquals(List.of(), pork.slugs(estimate, "P2 fat = 11 mm", "hot carcass weight = 50 kg"));
        assertEquals(List.of(), pork.slugs(estimate, "P2 fat = 11 mm", "hot carcass weight = 140 kg"));
        List<String> outside = List.of("outside-valid-range");
        assertEquals(outside, pork.slugs(estimate, "P2 fat = 11 mm", "hot carcass weight = 49.9 kg"));
        assertEquals(outside, pork.slugs(estimate, "P2 fat = 11 mm", "hot carcass weight = 140.1 kg"));
        assertEquals(List.of("range-not-checked"), pork.slugs(estimate, "P2 fat = 11 mm"));
    }

    /** Weights invented for the check: 0.89 x 46 / 80 is 51.175 %. */
    @Test
    void lean_by_reference_dissection_is_a_ratio_of_sums() {
        String[] dissected = {
            "tenderloin = 1 kg",
            "lean in shoulder = 13 kg",
            "lean in loin = 11 kg",
            "lean in ham = 16 kg",
            "lean in belly = 5 kg",
            "dissected cuts = 79 kg"
        };
        assertEquals("51.175", pork.exact("lean by dissection", dissected).toPlainString(), BY_HAND);
    }
}
