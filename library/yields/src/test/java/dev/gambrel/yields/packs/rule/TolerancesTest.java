package dev.gambrel.yields.packs.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class TolerancesTest {
    private static Quantity quantity(String amount, Unit unit) {
        return Quantity.of(amount, unit);
    }

    private static Tolerance at(ToleranceTable table, String amount, Unit unit) {
        return table.at(quantity(amount, unit)).orElseThrow();
    }

    private static void assertSame(String wanted, Unit unit, Quantity found) {
        assertEquals(0, quantity(wanted, unit).compareTo(found), found.toString());
    }

    /** Worked out by hand from the table of directive 76/211/EEC, Annex I, 2.4; per cent are rounded up to 0.1 g. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            5, 0.5, 4.5, 4.0
            25, 2.3, 22.7, 20.4
            50, 4.5, 45.5, 41.0
            75, 4.5, 70.5, 66.0
            100, 4.5, 95.5, 91.0
            125, 5.7, 119.3, 113.6
            150, 6.8, 143.2, 136.4
            200, 9.0, 191.0, 182.0
            227, 9.0, 218.0, 209.0
            250, 9.0, 241.0, 232.0
            300, 9.0, 291.0, 282.0
            350, 10.5, 339.5, 329.0
            400, 12.0, 388.0, 376.0
            454, 13.7, 440.3, 426.6
            500, 15.0, 485.0, 470.0
            750, 15.0, 735.0, 720.0
            1000, 15.0, 985.0, 970.0
            2500, 37.5, 2462.5, 2425.0
            10000, 150.0, 9850.0, 9700.0
            """)
    void tolerable_negative_errors_of_the_directive(String nominal, String error, String t1, String t2) {
        Tolerance tolerance = at(Directive76211.TOLERABLE_NEGATIVE_ERROR, nominal, Unit.GRAM);
        assertSame(error, Unit.GRAM, tolerance.amount());
        assertSame(t1, Unit.GRAM, tolerance.firstLimit());
        assertSame(t2, Unit.GRAM, tolerance.secondLimit());
        assertTrue(tolerance.citation().document().startsWith("Directive 76/211/EEC, Annex I, 2.4"));
        assertFalse(tolerance.citation().isFromMemory());
    }

    @Test
    void a_label_in_kilograms_has_the_error_of_the_same_grams() {
        Tolerance tolerance = at(Directive76211.TOLERABLE_NEGATIVE_ERROR, "2.5", Unit.KILOGRAM);
        assertEquals("37.5 g", tolerance.amount().toString());
        assertEquals("2462.5 g", tolerance.firstLimit().toString());
    }

    /** 8 oz are 226.796185 g exactly (international yard and pound agreement of 1959). */
    @Test
    void limits_of_a_label_in_ounces_are_exact() {
        Tolerance tolerance = at(Directive76211.TOLERABLE_NEGATIVE_ERROR, "8", Unit.OUNCE);
        assertEquals("217.796185 g", tolerance.firstLimit().toString());
    }

    /** The table of the directive ends at 10 kg; 150 g to 15 kg and 1 % beyond are the United Kingdom's (gov.uk). */
    @Test
    void beyond_ten_kilograms_only_the_united_kingdom_has_a_row() {
        assertTrue(Directive76211.TOLERABLE_NEGATIVE_ERROR
                .at(quantity("10.001", Unit.KILOGRAM))
                .isEmpty());
        Tolerance twelve = at(Directive76211.UNITED_KINGDOM_TABLE, "12", Unit.KILOGRAM);
        assertSame("150", Unit.GRAM, twelve.amount());
        assertTrue(
                twelve.citation().document().contains("2006/659"),
                twelve.citation().toString());
        assertSame(
                "200",
                Unit.GRAM,
                at(Directive76211.UNITED_KINGDOM_TABLE, "20", Unit.KILOGRAM).amount());
        assertTrue(Directive76211.UNITED_KINGDOM_TABLE
                .at(quantity("25.1", Unit.KILOGRAM))
                .isEmpty());
    }

    @Test
    void under_five_grams_the_directive_says_nothing() {
        assertTrue(Directive76211.TOLERABLE_NEGATIVE_ERROR
                .at(quantity("4.99", Unit.GRAM))
                .isEmpty());
        assertEquals("5 g to 10000 g", Directive76211.TOLERABLE_NEGATIVE_ERROR.extent());
    }

    /** National Trade Measurement Regulations 2009 of Australia, regulation 4.36, with its note on rounding. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            40, 3.6
            125, 5.7
            1000, 15
            1500, 23
            2500, 38
            3000, 45
            12000, 150
            20050, 201
            """)
    void oiml_rounds_up_to_a_gram_above_one_kilogram(String nominal, String deficiency) {
        Tolerance tolerance = at(Recommendation87.TOLERABLE_DEFICIENCY, nominal, Unit.GRAM);
        assertSame(deficiency, Unit.GRAM, tolerance.amount());
        assertEquals(Certainty.SEEN_QUOTED, tolerance.citation().certainty());
    }

    /** NIST Handbook 133, Appendix A, Table 2-9: from memory. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            80, GRAM, 8.0, GRAM
            85, GRAM, 14.2, GRAM
            198, GRAM, 14.2, GRAM
            198.4, GRAM, 28.3, GRAM
            7, OUNCE, 0.5, OUNCE
            1, POUND, 1, OUNCE
            3, POUND, 1, OUNCE
            10, POUND, 1.5, OUNCE
            12, POUND, 0.12, POUND
            """)
    void variations_of_the_handbook_go_by_the_unit_of_the_label(String nominal, Unit unit, String allowed, Unit in) {
        Tolerance tolerance =
                Handbook133.CATEGORY_A.tolerance(quantity(nominal, unit)).orElseThrow();
        assertSame(allowed, in, tolerance.amount());
        assertTrue(tolerance.citation().isFromMemory());
    }

    /** Institutional Meat Purchase Specifications, November 2014, section 3.5.1, as an engineering note quotes it. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            5.99, 0.25
            6.00, 0.5
            8, 0.5
            12.00, 0.5
            12.005, 0.75
            12.01, 0.75
            24.00, 0.75
            24.01, 1.0
            40, 1.0
            """)
    void published_tolerances_of_portion_weight(String ounces, String tolerance) {
        assertSame(
                tolerance,
                Unit.OUNCE,
                at(PortionTolerances.WEIGHT, ounces, Unit.OUNCE).amount());
    }

    /** The same, sections 3.5.1 and 3.6: three sixteenths of an inch up to 1 inch, a quarter above. */
    @ParameterizedTest
    @CsvSource({"0.75, INCH, 0.1875", "1.0, INCH, 0.1875", "25.4, MILLIMETRE, 0.1875", "1.25, INCH, 0.25"})
    void published_tolerances_of_portion_thickness(String thickness, Unit unit, String tolerance) {
        assertSame(
                tolerance,
                Unit.INCH,
                at(PortionTolerances.THICKNESS, thickness, unit).amount());
    }

    @Test
    void every_row_and_every_plan_says_where_it_stands_and_how_sure_it_is() {
        Stream.of(
                        Directive76211.NOT_DESTRUCTIVE,
                        Directive76211.UK_DESTRUCTIVE,
                        Directive76211.PACKERS_RULES,
                        Recommendation87.REFERENCE_TEST,
                        Handbook133.CATEGORY_A)
                .forEach(test -> {
                    test.tables()
                            .forEach(table -> table.rows()
                                    .forEach(row ->
                                            assertTrue(row.citation().document().length() > 10)));
                    test.plans().forEach(plan -> {
                        assertTrue(plan.counts().document().length() > 10);
                        assertTrue(plan.factor().citation().edition().length() > 3);
                    });
                });
    }
}
