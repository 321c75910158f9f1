package dev.gambrel.yields.packs.planning;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.yields.packs.rule.Directive76211;
import dev.gambrel.yields.packs.rule.PackRule;
import dev.gambrel.yields.packs.rule.Tolerance;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PackAimTest {
    private static final Tolerance OF_200_G = Directive76211.TOLERABLE_NEGATIVE_ERROR
            .at(Quantity.of("200", Unit.GRAM))
            .orElseThrow();

    /**
     * Packs of 200 g that stray by 4, 5 and 6 g are an exercise in guidance to packers; the answers were computed from the three
     * rules with exact quantiles of the normal distribution, a different rule governing each.
     */
    @ParameterizedTest
    @CsvSource({"4, 200, MEAN", "5, 200.799820, FIRST_LIMIT", "6, 204.314099, SECOND_LIMIT"})
    void the_lowest_mean_that_keeps_three_rules(String spread, double grams, PackRule governs) {
        PackAim aim = PackAim.of(OF_200_G, Quantity.of(spread, Unit.GRAM));
        assertEquals(grams, aim.mean() * 1000, 1e-5);
        assertEquals(governs, aim.governs());
        assertEquals(grams - 200, aim.givenAway() * 1000, 1e-5);
    }

    @Test
    void at_the_aim_exactly_as_many_are_short_as_may_be() {
        PackAim first = PackAim.of(OF_200_G, Quantity.of("5", Unit.GRAM));
        assertEquals(0.025, first.shareUnder(OF_200_G.firstLimit()), 1e-12);
        PackAim second = PackAim.of(OF_200_G, Quantity.of("6", Unit.GRAM));
        assertEquals(0.0001, second.shareUnder(OF_200_G.secondLimit()), 1e-14);
    }

    /** The lines cross where T = 1.96 s, and where T = (3.72 − 1.96) s. */
    @Test
    void the_rule_that_governs_changes_where_the_lines_cross() {
        double first = 0.009 / 1.959963984540054;
        double second = 0.009 / (3.719016485455709 - 1.959963984540054);
        assertEquals(PackRule.MEAN, new PackAim(OF_200_G, first - 1e-9, 0).governs());
        assertEquals(PackRule.FIRST_LIMIT, new PackAim(OF_200_G, first + 1e-9, 0).governs());
        assertEquals(PackRule.FIRST_LIMIT, new PackAim(OF_200_G, second - 1e-9, 0).governs());
        assertEquals(PackRule.SECOND_LIMIT, new PackAim(OF_200_G, second + 1e-9, 0).governs());
    }

    @Test
    void what_the_mean_drifts_comes_on_top() {
        assertEquals(0.2015, new PackAim(OF_200_G, 0.004, 0.0015).mean(), 1e-12);
        assertEquals(0.2, new PackAim(OF_200_G, 0, 0).mean(), 1e-12);
        assertEquals(0, new PackAim(OF_200_G, 0, 0).shareUnder(OF_200_G.firstLimit()));
        assertThrows(IllegalArgumentException.class, () -> new PackAim(OF_200_G, -1, 0));
        assertThrows(IllegalArgumentException.class, () -> PackAim.of(OF_200_G, Quantity.of("4", Unit.MILLIMETRE)));
    }
}
