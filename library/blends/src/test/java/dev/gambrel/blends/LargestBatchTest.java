package dev.gambrel.blends;

import static dev.gambrel.blends.Trim.of;
import static dev.gambrel.blends.Trim.tubs;
import static dev.gambrel.blends.Trim.visual;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.term.Judged;
import dev.gambrel.yields.lean.Lean;
import java.util.List;
import org.junit.jupiter.api.Test;

/** Tubs of round figures, worked out by hand. */
class LargestBatchTest {
    private static final Judged BY_EYE = Judged.VISUAL;

    /** 60 kg that are 10 points too lean carry 30 kg that are 20 points too fat. */
    @Test
    void what_is_leaner_than_need_be_carries_what_is_fatter() {
        LargestBatch batch = largest(80, visual("lean", 90, 60), visual("flank", 60, 100));
        assertEquals(60, of(batch.batch(), "lean"), 1e-9);
        assertEquals(30, of(batch.batch(), "flank"), 1e-9);
        assertEquals(80, batch.batch().lean().mean(), 1e-12);
        assertEquals(70, batch.left().get(0).kilograms(), 1e-9);
    }

    /** The 70 kg left are 1,400 points too fat: 140 kg of 90 % would carry them, or 70 kg of 100 %, and no 80 %. */
    @Test
    void what_is_missing_is_what_would_use_up_the_rest() {
        Missing missing =
                largest(80, visual("lean", 90, 60), visual("flank", 60, 100)).missing();
        assertEquals(1400, missing.points(), 1e-9);
        assertEquals(140, missing.kilogramsOf(90).orElseThrow(), 1e-9);
        assertEquals(70, missing.kilogramsOf(100).orElseThrow(), 1e-9);
        assertTrue(missing.kilogramsOf(80).isEmpty());
        assertTrue(missing.kilogramsOf(60).isEmpty());
    }

    @Test
    void the_leaner_of_two_fat_tubs_goes_in_first() {
        LargestBatch batch = largest(80, visual("lean", 90, 60), visual("flank", 60, 100), visual("shank", 75, 50));
        assertEquals(50, of(batch.batch(), "shank"), 1e-9);
        assertEquals(17.5, of(batch.batch(), "flank"), 1e-9);
    }

    @Test
    void where_all_is_too_lean_the_fattest_carries_it() {
        Tubs tubs = tubs(visual("lean", 95, 90), visual("back fat", 5, 10));
        LargestBatch batch =
                LargestBatch.of(tubs, LeanTarget.exactly(80, BY_EYE)).orElseThrow();
        assertEquals(10, of(batch.batch(), "back fat"), 1e-9);
        assertEquals(50, of(batch.batch(), "lean"), 1e-9);
        assertEquals(8, batch.missing().kilogramsOf(5).orElseThrow(), 1e-9);
    }

    @Test
    void where_all_of_it_meets_the_target_all_goes_in_and_nothing_is_missing() {
        Tubs tubs = tubs(visual("lean", 90, 60), visual("flank", 60, 30));
        LargestBatch batch =
                LargestBatch.of(tubs, new LeanTarget(BY_EYE, 75, 85)).orElseThrow();
        assertEquals(90, batch.batch().kilograms(), 1e-12);
        assertTrue(batch.left().isEmpty());
        assertTrue(batch.missing().isNothing());
    }

    @Test
    void a_target_outside_the_tubs_is_refused_and_their_range_named() {
        Diagnostic found = only(
                LargestBatch.of(tubs(visual("lean", 90, 60), visual("flank", 60, 30)), LeanTarget.atLeast(92, BY_EYE)));
        assertEquals(
                "The blend is to be at least 92 % lean, visual; what is there gives from 60 % to 90 %, which misses it by 2"
                        + " points.",
                found.message());
        assertFalse(PearsonSquare.of(Lean.of(90, BY_EYE), Lean.of(60, BY_EYE), 55)
                .value()
                .isPresent());
    }

    @Test
    void lean_by_eye_is_never_blended_with_lean_by_analysis() {
        Result<Tubs> mixed = Tubs.of(List.of(
                visual("80s", 80, 10),
                new Tub(TradeName.of("CL 85"), Lean.of(85, Judged.CHEMICAL), 10, Price.NOT_STATED)));
        assertEquals(
                "The lean of CL 85 is chemical and that of 80s is visual; lean by eye and lean by analysis are not the same"
                        + " figure, and cannot be blended as one.",
                only(mixed).message());
        assertEquals(
                "G1901",
                only(LargestBatch.of(tubs(visual("80s", 80, 10)), LeanTarget.exactly(80, Judged.CHEMICAL)))
                        .code()
                        .id());
    }

    @Test
    void two_tubs_of_one_name_are_refused() {
        assertEquals(
                "There are two tubs called 80S.",
                only(Tubs.of(List.of(visual("80s", 80, 10), visual("80S", 85, 10))))
                        .message());
    }

    private static LargestBatch largest(double percent, Tub... tubs) {
        return LargestBatch.of(tubs(tubs), LeanTarget.atLeast(percent, BY_EYE)).orElseThrow();
    }

    private static Diagnostic only(Result<?> result) {
        assertEquals(1, result.diagnostics().size(), result.toString());
        return result.diagnostics().get(0);
    }
}
