package dev.gambrel.conformance.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.CarcassWeight;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.Outcome;
import dev.gambrel.yields.YieldRow;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.figure.Estimate;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** Nothing is gained or lost on the way from the carcass to the last tub. */
class MassLaws {
    /** Kilograms. */
    private static final double NOTHING = 1e-9;

    @Provide
    Arbitrary<Path> files() {
        return Arbitraries.of(Specifications.valid());
    }

    private static ExpectedYields yields(Path file, int grams) {
        CutTree tree = Specifications.compile(file).orElseThrow().tree();
        Quantity weight = new Quantity(java.math.BigDecimal.valueOf(grams), Unit.GRAM);
        return Yields.of(tree)
                .forCarcass(new CarcassWeight(weight, tree.carcass().basis()))
                .orElseThrow();
    }

    @Property(tries = 300)
    void all_outcomes_together_are_what_was_weighed(
            @ForAll("files") Path file, @ForAll @IntRange(min = 1, max = 200_000) int grams) {
        ExpectedYields yields = yields(file, grams);
        double sum = Stream.of(Outcome.values())
                .mapToDouble(o -> yields.total(o).mean())
                .sum();
        assertEquals(grams / 1000.0, sum, NOTHING);
    }

    @Property(tries = 300)
    void the_parts_of_every_cut_together_are_the_cut(
            @ForAll("files") Path file, @ForAll @IntRange(min = 1, max = 200_000) int grams) {
        List<YieldRow> rows = yields(file, grams).rows();
        for (YieldRow row : rows) {
            if (!row.isEnd()) {
                assertEquals(
                        mean(row),
                        row.parts().stream().mapToDouble(MassLaws::mean).sum(),
                        NOTHING,
                        row.name());
            }
        }
        assertTrue(rows.size() > 1);
    }

    @Property(tries = 100)
    void what_is_sold_and_what_is_put_in_tubs_and_what_is_lost_is_all(
            @ForAll("files") Path file, @ForAll @IntRange(min = 1, max = 200_000) int grams) {
        ExpectedYields yields = yields(file, grams);
        double streams =
                yields.streams().stream().mapToDouble(s -> s.weight().mean()).sum();
        double rest = yields.products().mean()
                + yields.total(Outcome.LOSS).mean()
                + yields.total(Outcome.NOT_STATED).mean();
        assertEquals(grams / 1000.0, streams + rest, NOTHING);
    }

    /** What has no share of its own stays in what is left, and weighs nothing here. */
    private static double mean(YieldRow row) {
        return row.allPieces().map(Estimate::mean).orElse(0.0);
    }
}
