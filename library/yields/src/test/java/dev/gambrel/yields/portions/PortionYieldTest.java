package dev.gambrel.yields.portions;

import static dev.gambrel.yields.Sheet.pair;
import static dev.gambrel.yields.Sheet.rest;
import static dev.gambrel.yields.Sheet.to;
import static dev.gambrel.yields.Sheet.trim;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.portion.Acceptance;
import dev.gambrel.tree.portion.Aim;
import dev.gambrel.tree.portion.Fewest;
import dev.gambrel.tree.portion.Finish;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.tree.portion.Measure;
import dev.gambrel.tree.portion.MuscleArea;
import dev.gambrel.tree.portion.Precedence;
import dev.gambrel.tree.portion.Slicing;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.Sheet;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.working.Pairs;
import dev.gambrel.yields.working.Working;
import java.util.List;
import org.junit.jupiter.api.Test;

class PortionYieldTest {
    private static final Expected STEAK = new Expected.PlusMinus(grams("180"), grams("6"));
    private static final Expected CHOP = new Expected.Mean(mm("25"));
    private static final Portion.EndPieces NO_ENDS = new Portion.EndPieces.NotStated();

    private static Quantity grams(String amount) {
        return Quantity.of(amount, Unit.GRAM);
    }

    private static Quantity mm(String amount) {
        return Quantity.of(amount, Unit.MILLIMETRE);
    }

    private static Slicing sliced(String kerf, Expected length) {
        return new Slicing(new Measure.Stated(mm(kerf)), new Slicing.Length.Stated(length), "");
    }

    private static Acceptance accepted(Limit weight, Limit thickness, Precedence rules, Fewest fewest) {
        return new Acceptance(weight, thickness, rules, new Measure.NotStated(), fewest);
    }

    private static Portion portion(Aim aim, Acceptance accepted, Slicing slicing, Portion.EndPieces ends) {
        return new Portion(TradeName.of("steak"), aim, accepted, slicing, Finish.NONE, ends, to("diced"));
    }

    /** A topside of 22 kg × 20 % × 90 % / 2 = 1.98 kg. */
    private static PortionYield of(Portion portion) {
        return of(portion, Pairs.ALIKE);
    }

    private static PortionYield of(Portion portion, Pairs pairs) {
        Cut cut = pair("topside", "20 ± 1", trim("fat", "10 ± 1", "mince"));
        Cut portioned = new Cut(
                cut.name(), cut.pieces(), cut.share(), cut.description(), cut.parts(), cut.home(), List.of(portion));
        Working working = Working.AS_WRITTEN.with(pairs);
        ExpectedYields yields = Yields.of(Sheet.hogget(portioned, rest("mince")), working)
                .forCarcass(Sheet.kilograms("22", Basis.COLD))
                .orElseThrow();
        return PortionYield.of(yields).get(0);
    }

    /** By hand: the variance of 80 steak counts is 80 times that of one where topsides are independent, 160 where alike. */
    @Test
    void what_many_carcasses_give_strays_as_the_pairs_of_the_run_do() {
        Portion steak = portion(new Aim.Weight(STEAK), Acceptance.NONE, Slicing.NONE, NO_ENDS);
        assertEquals(Math.sqrt(160), fortyOverOne(of(steak, Pairs.ALIKE)), 1e-9);
        assertEquals(Math.sqrt(80), fortyOverOne(of(steak, Pairs.INDEPENDENT)), 1e-9);
    }

    private static double fortyOverOne(PortionYield steaks) {
        double one = steaks.numberFromOne().orElseThrow().deviation();
        return steaks.numberFrom(SeveralCarcasses.of(40)).orElseThrow().deviation() / one;
    }

    /**
     * By hand: where a piece strays by more than half a portion the expected number is μ/p − ½ for each of 80 pieces, so a mean
     * that is off by s/√12 moves 80 s/(p √12) steaks, beside what the carcasses differ by.
     */
    @Test
    void what_cutting_tests_leave_in_doubt_does_not_average_out() {
        PortionYield steaks = of(portion(new Aim.Weight(STEAK), Acceptance.NONE, Slicing.NONE, NO_ENDS));
        double s = Sheet.sd(steaks.from().weight());
        double known = steaks.numberFrom(SeveralCarcasses.of(40)).orElseThrow().deviation();
        double tested =
                steaks.numberFrom(SeveralCarcasses.of(40, 12)).orElseThrow().deviation();
        double moved = 80 * s / (0.18 * Math.sqrt(12));
        assertEquals(1, Math.hypot(known, moved) / tested, 0.01);
    }

    /** By hand: alike, the two of a pair are known as one is; independent, what both give strays less than one does by √2. */
    @Test
    void cutting_tests_tell_of_both_pieces_of_a_carcass() {
        PortionYield steaks = of(portion(new Aim.Weight(STEAK), Acceptance.NONE, Slicing.NONE, NO_ENDS));
        Portioning one = steaks.counted().orElseThrow();
        double cv = Sheet.sd(steaks.from().weight()) / 1.98;
        assertEquals(cv / 2, new MeanDoubt.FromTests(4).ofMean(one, 2, 1), 1e-12);
        assertEquals(cv / 2 / Math.sqrt(2), new MeanDoubt.FromTests(4).ofMean(one, 2, 0), 1e-12);
    }

    @Test
    void steaks_come_from_one_trimmed_piece_at_a_time() {
        PortionYield steaks = of(portion(new Aim.Weight(STEAK), Acceptance.NONE, Slicing.NONE, NO_ENDS));
        assertEquals(2, steaks.from().pieces());
        assertEquals(1.98, steaks.from().weight().mean(), 1e-12);
        double fromAll = steaks.expectedNumberFromAll().orElseThrow();
        assertEquals(2 * steaks.expectedNumber().orElseThrow(), fromAll, 0);
        assertEquals(2 * 1.98, fromAll * 0.18 + steaks.expectedRemainderOfAll().orElseThrow(), 1e-9);
        assertEquals(0.006 * 0.3989422804014327, steaks.givenAway().orElseThrow(), 1e-12);
        assertTrue(steaks.lostToKerf().isEmpty());
        assertTrue(steaks.shareAccepted().isEmpty());
    }

    /** 187 mm give seven chops of 25 mm with six cuts of 2 mm, and 1.98 / 187 kg to the millimetre. */
    @Test
    void chops_are_counted_along_the_loin() {
        PortionYield chops = of(
                portion(new Aim.Thickness(CHOP), Acceptance.NONE, sliced("2", new Expected.Mean(mm("187"))), NO_ENDS));
        assertEquals(7, chops.expectedNumber().orElseThrow());
        assertEquals(25 * 1.98 / 187, chops.each().orElseThrow().mean(), 1e-12);
        assertEquals(12 * 1.98 / 187, chops.lostToKerf().orElseThrow(), 1e-12);
        assertEquals(0, chops.expectedRemainder().orElseThrow(), 1e-12);
        assertEquals(1.98 * 175 / 187, chops.expectedPortionsOfOne().orElseThrow(), 1e-12);
    }

    /** P(length ≥ 187) with mean 187: one half. */
    @Test
    void at_least_seven_from_a_side_has_its_chance() {
        Expected length = new Expected.PlusMinus(mm("187"), mm("10"));
        Acceptance seven = accepted(
                new Limit.NotStated(),
                new Limit.NotStated(),
                Precedence.NOT_STATED,
                new Fewest.From(7, Fewest.Whole.SIDE));
        PortionYield chops = of(portion(new Aim.Thickness(CHOP), seven, sliced("2", length), NO_ENDS));
        assertEquals(0.5, chops.chanceOfFewest().orElseThrow(), 1e-12);
    }

    @Test
    void without_a_length_slices_are_neither_counted_nor_weighed() {
        PortionYield chops = of(portion(new Aim.Thickness(CHOP), Acceptance.NONE, Slicing.NONE, NO_ENDS));
        assertTrue(chops.expectedNumber().isEmpty());
        assertTrue(chops.each().isEmpty());
        assertTrue(chops.expectedRemainder().isEmpty());
        assertTrue(chops.expectedPortionsOfOne().isEmpty());
    }

    /** A cut of 2 mm beside a steak of 25 mm and 180 g takes 14.4 g. */
    @Test
    void a_saw_takes_weight_between_weighed_steaks() {
        Acceptance weightRules =
                accepted(new Limit.NotStated(), new Limit.NotStated(), Precedence.WEIGHT, new Fewest.NotStated());
        Slicing saw = new Slicing(new Measure.Stated(mm("2")), new Slicing.Length.NotStated(), "");
        PortionYield steaks = of(portion(new Aim.WeightAndThickness(STEAK, CHOP), weightRules, saw, NO_ENDS));
        double cuts = steaks.expectedNumber().orElseThrow()
                - steaks.counted().orElseThrow().chanceOfAtLeast(1).orElseThrow();
        assertEquals(0.0144 * cuts, steaks.lostToKerf().orElseThrow(), 1e-12);
    }

    @Test
    void thickness_rules_and_weight_follows() {
        Acceptance thicknessRules =
                accepted(new Limit.NotStated(), new Limit.NotStated(), Precedence.THICKNESS, new Fewest.NotStated());
        PortionYield steaks = of(portion(
                new Aim.WeightAndThickness(STEAK, CHOP),
                thicknessRules,
                sliced("0", new Expected.Mean(mm("200"))),
                NO_ENDS));
        assertEquals(8, steaks.expectedNumber().orElseThrow());
        assertEquals(1.98 / 8, steaks.each().orElseThrow().mean(), 1e-12);
    }

    @Test
    void a_piece_halved_gives_two_as_heavy_as_it_is() {
        Limit range = new Limit.Between(grams("900"), grams("1100"));
        PortionYield joints = of(portion(new Aim.Number(2), Acceptance.of(range), Slicing.NONE, NO_ENDS));
        assertEquals(2, joints.expectedNumber().orElseThrow());
        assertEquals(4, joints.expectedNumberFromAll().orElseThrow());
        assertEquals(0.99, joints.each().orElseThrow().mean(), 1e-12);
        assertEquals(0, joints.expectedRemainder().orElseThrow());
        PortionWeight each = PortionWeight.of(joints.each().orElseThrow()).orElseThrow();
        assertEquals(each.shareWithin(range), joints.shareAccepted());
    }

    @Test
    void end_pieces_that_are_weighed_are_no_portion() {
        Portion.EndPieces ends = new Portion.EndPieces.Weighed(new Expected.Mean(grams("180")), to("mince"));
        PortionYield joints = of(portion(new Aim.Number(2), Acceptance.NONE, Slicing.NONE, ends));
        assertEquals(0.90, joints.each().orElseThrow().mean(), 1e-12);
        PortionYield chops =
                of(portion(new Aim.Thickness(CHOP), Acceptance.NONE, sliced("0", new Expected.Mean(mm("220"))), ends));
        assertEquals(8, chops.expectedNumber().orElseThrow(), "180 g of 1980 g are 20 mm of 220 mm");
        assertEquals(0.18, chops.expectedRemainder().orElseThrow(), 1e-12);
    }

    /** Multiplied by hand: 170 / (1.05 × 2.2) = 73.59 and 170 / (1.05 × 1.8) = 89.95; 1.05 is common practice, no source. */
    @Test
    void weight_and_thickness_need_a_muscle_of_some_size() {
        Expected weight = new Expected.Mean(grams("170"));
        Acceptance range = accepted(
                new Limit.NotStated(),
                new Limit.Between(mm("18"), mm("22")),
                Precedence.WEIGHT,
                new Fewest.NotStated());
        MuscleArea area = MuscleArea.aimedAt(new Aim.Weight(weight), range).orElseThrow();
        assertEquals(73.59, area.least(), 0.005);
        assertEquals(89.95, area.most(), 0.005);
        Expected thickness = new Expected.CentralRange(mm("18"), mm("22"));
        Aim both = new Aim.WeightAndThickness(weight, thickness);
        assertEquals(area, MuscleArea.aimedAt(both, Acceptance.NONE).orElseThrow());
    }

    @Test
    void at_least_so_thick_is_a_muscle_of_at_most_so_much() {
        Acceptance thick = accepted(
                new Limit.NotStated(),
                new Limit.AtLeast(Quantity.of("0.75", Unit.INCH)),
                Precedence.WEIGHT,
                new Fewest.NotStated());
        Aim eightOunces = new Aim.Weight(new Expected.Mean(Quantity.of("8", Unit.OUNCE)));
        MuscleArea area = MuscleArea.aimedAt(eightOunces, thick).orElseThrow();
        assertEquals(0, area.least());
        assertEquals(226.796185 / (1.05 * 1.905), area.most(), 1e-9);
    }
}
