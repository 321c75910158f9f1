package dev.gambrel.yields.lean;

import static dev.gambrel.yields.Sheet.cut;
import static dev.gambrel.yields.Sheet.hogget;
import static dev.gambrel.yields.Sheet.rest;
import static dev.gambrel.yields.Sheet.trim;
import static dev.gambrel.yields.Sheet.yields;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.term.Judged;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.YieldRow;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Spread;
import java.util.Map;
import java.util.Optional;
import java.util.Random;
import java.util.function.Function;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Figures by hand. */
class StreamLeansTest {
    private static final CutTree TREE = hogget(
            cut("fore", "40 ± 2"), trim("plate", "20 ± 1", "mince"), trim("flank", "10 ± 1", "mince"), rest("bones"));

    private static Lean visual(double percent, double sd) {
        return new Lean(new Estimate(percent, new Spread.Stated(sd)), Judged.VISUAL);
    }

    private static StreamLean mince(ExpectedYields yields, Function<YieldRow, Optional<Lean>> leanOf) {
        return StreamLeans.of(yields, leanOf).get(1);
    }

    private static Function<YieldRow, Optional<Lean>> by(Map<String, Lean> leans) {
        return row -> Optional.ofNullable(leans.get(row.name()));
    }

    private static StreamLean.Found.Known known(Lean plate, Lean flank) {
        StreamLean found = mince(yields(TREE, "20"), by(Map.of("plate", plate, "flank", flank)));
        return assertInstanceOf(StreamLean.Found.Known.class, found.found());
    }

    /**
     * Two parts of 80 % to one of 50 %: 70 %. The gaps are 10 and -20 points, the spreads 1 point of the carcass each, and the
     * stream 30 points: √(10² + 20²) / 30 = 0.7454. The mean moves by -(10 - 20) / 30² = 0.0111.
     */
    @Test
    void a_stream_is_as_lean_as_its_sources_by_weight() {
        Estimate lean = known(visual(80, 0), visual(50, 0)).lean().percent();
        assertEquals(70 + 10.0 / 900, lean.mean(), 1e-9);
        assertEquals(Math.sqrt(500) / 30, sd(lean), 1e-9);
    }

    /**
     * The same, leans straying by 3 and 6 points. The parts of 2/3 and 1/3 stray by √(1/9 + 4/9) / 30, so E[p²] is 4/9 and 1/9
     * and 5/8100 more.
     */
    @Test
    void how_far_the_leans_stray_comes_on_top() {
        Estimate lean = known(visual(80, 3), visual(50, 6)).lean().percent();
        double ofLeans = (4.0 / 9 + 5.0 / 8100) * 9 + (1.0 / 9 + 5.0 / 8100) * 36;
        assertEquals(Math.sqrt(500.0 / 900 + ofLeans), sd(lean), 1e-9);
    }

    @Test
    void a_stream_of_one_source_is_as_lean_as_that_and_strays_as_far() {
        CutTree tree = hogget(cut("fore", "40"), trim("plate", "20", "mince"), rest("bones"));
        StreamLean.Found.Known found =
                (StreamLean.Found.Known) mince(yields(tree, "20"), by(Map.of("plate", visual(80, 3))))
                        .found();
        assertEquals(80, found.lean().percent().mean(), 1e-12);
        assertEquals(3, sd(found.lean().percent()), 1e-12);
        assertEquals(80 - 1.96 * 3, found.range95().orElseThrow().low(), 1e-3);
    }

    /** Draws of the shares and of the leans, all independent but for the rest (JCGM 101). */
    @Test
    void mean_and_spread_agree_with_draws() {
        Random random = new Random(20_260_101);
        int draws = 400_000;
        double sum = 0;
        double squares = 0;
        Estimate lean = known(visual(80, 3), visual(50, 6)).lean().percent();
        for (int i = 0; i < draws; i++) {
            double plate = 20 + random.nextGaussian();
            double flank = 10 + random.nextGaussian();
            double leanWeight = plate * (80 + 3 * random.nextGaussian()) + flank * (50 + 6 * random.nextGaussian());
            double gap = leanWeight / (plate + flank) - lean.mean();
            sum += gap;
            squares += gap * gap;
        }
        assertEquals(0, sum / draws, 4 * sd(lean) / Math.sqrt(draws));
        assertEquals(1, Math.sqrt(squares / draws) / sd(lean), 4 / Math.sqrt(2.0 * draws));
    }

    @Test
    void sources_that_are_equally_lean_give_that_lean_exactly() {
        Estimate lean = known(visual(80, 0), visual(80, 0)).lean().percent();
        assertEquals(80, lean.mean(), 1e-12);
        assertEquals(0, sd(lean), 1e-12);
    }

    @Test
    void a_heavier_carcass_gives_a_stream_as_lean() {
        Function<YieldRow, Optional<Lean>> leans = by(Map.of("plate", visual(80, 3), "flank", visual(50, 2)));
        Lean light = ((StreamLean.Found.Known) mince(yields(TREE, "20"), leans).found()).lean();
        Lean heavy = ((StreamLean.Found.Known) mince(yields(TREE, "24"), leans).found()).lean();
        assertEquals(light.percent().mean(), heavy.percent().mean(), 1e-12);
        assertEquals(sd(light.percent()), sd(heavy.percent()), 1e-12);
    }

    @Test
    void a_source_whose_lean_is_not_stated_is_named_and_none_is_guessed() {
        StreamLean.Found found =
                mince(yields(TREE, "20"), by(Map.of("plate", visual(80, 0)))).found();
        StreamLean.Found.NotStated missing = assertInstanceOf(StreamLean.Found.NotStated.class, found);
        assertEquals("[flank]", missing.lean().toString());
        assertTrue(missing.weight().isEmpty());
    }

    @Test
    void a_source_whose_weight_is_not_stated_is_named() {
        CutTree tree = hogget(cut("fore", "40"), trim("plate", "", "mince"), rest("bones"));
        StreamLean.Found found =
                mince(yields(tree, "20"), by(Map.of("plate", visual(80, 0)))).found();
        assertEquals("[plate]", ((StreamLean.Found.NotStated) found).weight().toString());
    }

    @Test
    void a_spread_that_is_not_stated_is_not_taken_for_none() {
        StreamLean.Found.Known found = known(visual(80, 3), Lean.of(50, Judged.VISUAL));
        assertEquals(Spread.NOT_STATED, found.lean().percent().spread());
        assertTrue(found.range95().isEmpty());
    }

    @Test
    void visual_and_chemical_lean_are_not_added() {
        Lean chemical = Lean.of(50, Judged.CHEMICAL);
        StreamLean found = mince(yields(TREE, "20"), by(Map.of("plate", visual(80, 3), "flank", chemical)));
        assertEquals(
                "plate and flank",
                found.found() instanceof StreamLean.Found.JudgedApart apart
                        ? apart.one() + " and " + apart.other()
                        : "");
    }

    /** The dice of the sheet are meant to be 95 % by eye. */
    @ParameterizedTest
    @CsvSource({
        "95, 1, VISUAL, WITHIN",
        "93, 2, VISUAL, WITHIN",
        "90, 2, VISUAL, FATTER",
        "99, 1, VISUAL, LEANER",
        "95, 1, CHEMICAL, JUDGED_APART",
        "95, 1, NOT_STATED, JUDGED_APART"
    })
    void what_comes_out_is_held_beside_what_is_meant(
            double percent, double sd, Judged judged, StreamLean.Against expected) {
        CutTree tree = hogget(cut("fore", "40"), trim("plate", "20 ± 1", "diced"), rest("bones"));
        Lean plate = new Lean(new Estimate(percent, new Spread.Stated(sd)), judged);
        StreamLean diced =
                StreamLeans.of(yields(tree, "20"), by(Map.of("plate", plate))).get(0);
        assertEquals(expected, diced.against());
    }

    @Test
    void where_no_spread_is_stated_the_means_are_compared() {
        CutTree tree = hogget(cut("fore", "40"), trim("plate", "20", "diced"), rest("bones"));
        assertEquals(StreamLean.Against.WITHIN, diced(tree, 95.04).against());
        assertEquals(StreamLean.Against.LEANER, diced(tree, 95.06).against());
        assertEquals(
                StreamLean.Against.CANNOT_SAY,
                mince(yields(TREE, "20"), row -> Optional.empty()).against());
    }

    private static StreamLean diced(CutTree tree, double percent) {
        Lean plate = Lean.of(percent, Judged.VISUAL);
        return StreamLeans.of(yields(tree, "20"), by(Map.of("plate", plate))).get(0);
    }

    @Test
    void into_some_streams_nothing_goes() {
        assertInstanceOf(
                StreamLean.Found.Nothing.class,
                StreamLeans.of(yields(TREE, "20"), row -> Optional.empty())
                        .get(0)
                        .found());
    }

    private static double sd(Estimate estimate) {
        return ((Spread.Stated) estimate.spread()).standardDeviation();
    }
}
