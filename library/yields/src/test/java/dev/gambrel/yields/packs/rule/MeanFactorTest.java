package dev.gambrel.yields.packs.rule;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.math.BigDecimal;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class MeanFactorTest {
    /**
     * Printed: SI 2006/659, Schedule 2, 4.5 and 4.6, for 20, 30 and 50 packs; OIML R 87 (2004), Table 1, for 80 and 125; NIST
     * Handbook 133, Table 2-1, for 12, 24 and 48, from memory. Each is Student's t over the root of n to half a digit.
     */
    @ParameterizedTest
    @CsvSource(textBlock = """
            0.995, 20, 0.640, 0.639724
            0.995, 30, 0.503, 0.503245
            0.995, 50, 0.379, 0.379002
            0.995, 80, 0.295, 0.295106
            0.995, 125, 0.234, 0.233988
            0.975, 12, 0.635, 0.635370
            0.975, 24, 0.422, 0.422263
            0.975, 48, 0.290, 0.290370
            """)
    void printed_factors_are_student_s_t_over_the_root_of_n_rounded(
            double confidence, int packs, double printed, double computed) {
        double worked = MeanFactor.workedOut(confidence, packs);
        assertEquals(computed, worked, 5e-7);
        assertEquals(printed, worked, 5e-4);
    }

    @Test
    void what_is_printed_is_the_law_even_where_it_is_rounded() {
        assertEquals(new BigDecimal("0.503"), factor(Directive76211.NOT_DESTRUCTIVE, 300));
        assertEquals(new BigDecimal("0.379"), factor(Directive76211.NOT_DESTRUCTIVE, 501));
        assertEquals(new BigDecimal("0.640"), factor(Directive76211.DESTRUCTIVE, 100));
        assertEquals(new BigDecimal("0.234"), factor(Recommendation87.REFERENCE_TEST, 3_500));
        assertEquals(new BigDecimal("0.635"), factor(Handbook133.CATEGORY_A, 250));
    }

    @Test
    void a_factor_takes_two_packs_and_a_confidence() {
        assertThrows(IllegalArgumentException.class, () -> MeanFactor.workedOut(0.995, 1));
        assertThrows(IllegalArgumentException.class, () -> MeanFactor.workedOut(1, 20));
    }

    /** Directive 76/211/EEC, Annex II, 2.2.1, the double sampling plan, and 2.2.2, the destructive one. */
    @ParameterizedTest
    @CsvSource(textBlock = """
            100, 30, 1, 3, 60, 4, 5
            500, 30, 1, 3, 60, 4, 5
            501, 50, 2, 5, 100, 6, 7
            3200, 50, 2, 5, 100, 6, 7
            3201, 80, 3, 7, 160, 8, 9
            90000, 80, 3, 7, 160, 8, 9
            """)
    void the_size_of_the_batch_decides_the_plan(
            long batch, int first, long accept, long reject, int both, long acceptBoth, long rejectBoth) {
        SamplingPlan plan = Directive76211.NOT_DESTRUCTIVE.plan(batch).orElseThrow();
        assertEquals(
                Stream.of(new SamplingStage(first, accept, reject), new SamplingStage(both, acceptBoth, rejectBoth))
                        .toList(),
                plan.stages());
        assertEquals(
                new SamplingStage(20, 1, 2),
                Directive76211.DESTRUCTIVE.plan(batch).orElseThrow().stages().get(0));
    }

    /** Directive 76/211/EEC, Annex II, 2.1.3: of fewer than 100 the check is of all; destructive tests are not for them. */
    @Test
    void a_batch_under_a_hundred_is_weighed_whole() {
        SamplingPlan plan = Directive76211.NOT_DESTRUCTIVE.plan(99).orElseThrow();
        assertEquals(99, plan.stages().get(0).packs());
        assertEquals(BigDecimal.ZERO, plan.factor().value());
        // 2.5 % of 99 are 2.475.
        assertEquals(2, plan.stages().get(0).accept());
        assertTrue(Directive76211.DESTRUCTIVE.plan(99).isEmpty());
        assertTrue(Directive76211.NOT_DESTRUCTIVE.plan(0).isEmpty());
    }

    private static BigDecimal factor(PackTest test, long batch) {
        return test.plan(batch).orElseThrow().factor().value();
    }
}
