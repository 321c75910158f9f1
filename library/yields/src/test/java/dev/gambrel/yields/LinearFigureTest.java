package dev.gambrel.yields;

import static dev.gambrel.yields.Sheet.cut;
import static dev.gambrel.yields.Sheet.hogget;
import static dev.gambrel.yields.Sheet.rest;
import static dev.gambrel.yields.Sheet.sd;
import static dev.gambrel.yields.Sheet.yields;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.tree.CutTree;
import java.util.Map;
import org.junit.jupiter.api.Test;

class LinearFigureTest {
    private static final CutTree SIDES = hogget(
            cut("fore", "40 ± 1.2"),
            cut("middle", "24 ± 1.0"),
            cut("hind", "36 ± 0.9", cut("leg", "74 ± 1.2"), rest("mince")));

    private static final Map<String, Double> SALEABLE = Map.of("fore", 0.78, "middle", 0.81, "leg", 0.85, "rest", 0.80);

    private static Estimate saleable(String kilograms) {
        return yields(SIDES, kilograms).figure(row -> SALEABLE.getOrDefault(row.name(), 0.0));
    }

    /** Check A07, computed for Gambrel and confirmed by 4,000,000 draws. */
    @Test
    void an_uncertain_carcass_makes_an_uncertain_saleable_weight() {
        Estimate carcass = new Estimate(22, new Spread.Stated(1.5));
        Estimate weight = carcass.timesIndependent(saleable("1"));
        assertEquals(17.76984000, weight.mean(), 1e-7);
        assertEquals(1.21164754, sd(weight), 1e-7);
    }

    @Test
    void the_weight_of_a_line_is_the_figure_that_counts_it_alone() {
        ExpectedYields yields = yields(SIDES, "22");
        for (YieldRow line : yields.rows()) {
            Estimate alone = yields.figure(row -> row.name().equals(line.name()) ? 1 : 0);
            Estimate weight = line.allPieces().orElseThrow();
            assertEquals(weight.mean(), alone.mean(), 1e-12);
            assertEquals(sd(weight), sd(alone), 1e-12);
        }
    }

    @Test
    void nothing_is_gained_or_lost_between_the_ends() {
        Estimate all = yields(SIDES, "22").figure(row -> row.isEnd() ? 1 : 0);
        assertEquals(22, all.mean(), 22e-12);
        assertEquals(Spread.NONE, all.spread());
    }
}
