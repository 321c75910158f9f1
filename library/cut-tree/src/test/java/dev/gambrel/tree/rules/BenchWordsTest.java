package dev.gambrel.tree.rules;

import static dev.gambrel.tree.Sheet.counted;
import static dev.gambrel.tree.Sheet.cut;
import static dev.gambrel.tree.Sheet.name;
import static dev.gambrel.tree.Sheet.rest;
import static dev.gambrel.tree.Sheet.share;
import static dev.gambrel.tree.Sheet.to;
import static dev.gambrel.tree.Sheet.trim;
import static dev.gambrel.tree.rules.Held.breaks;
import static dev.gambrel.tree.rules.Held.keepsTheRules;
import static dev.gambrel.tree.rules.Held.only;
import static dev.gambrel.tree.rules.Held.where;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.BoneState;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Description;
import dev.gambrel.tree.Landmark;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Separation;
import dev.gambrel.tree.Sheep;
import dev.gambrel.tree.Sheet;
import dev.gambrel.tree.TrimRule;
import dev.gambrel.tree.anatomy.AnatomicalCount;
import dev.gambrel.tree.anatomy.PieceCount;
import dev.gambrel.tree.bench.Bench;
import dev.gambrel.tree.bench.Matching;
import dev.gambrel.tree.bench.Treatment;
import dev.gambrel.tree.inspection.BenchCode;
import dev.gambrel.tree.inspection.TreeCode;
import java.util.List;
import org.junit.jupiter.api.Test;

class BenchWordsTest {
    private static final Matching WITHIN_50_G = new Matching.Within(Quantity.of("50", Unit.GRAM));

    private static Cut told(Cut cut, Bench bench, Landmark... landmarks) {
        List<Separation> separations = List.of(landmarks).stream()
                .map(landmark -> new Separation(List.of(), landmark))
                .toList();
        Description words =
                new Description(BoneState.NOT_STATED, List.of(), separations, List.of(), List.of(), List.of(), bench);
        return new Cut(cut.name(), cut.pieces(), cut.share(), words, cut.parts(), cut.home(), cut.portions());
    }

    private static Bench matching(Matching matching) {
        return new Bench(matching, AnatomicalCount.NOT_STATED, List.of(), List.of(), 1);
    }

    private static Bench ribs(int least, int most) {
        return new Bench(new Matching.NotStated(), new AnatomicalCount(least, most), List.of(), List.of(), 1);
    }

    private static Cut after(Cut cut, String... names) {
        List<TradeName> before = List.of(names).stream().map(TradeName::of).toList();
        return told(cut, new Bench(new Matching.NotStated(), AnatomicalCount.NOT_STATED, List.of(), before, 1));
    }

    @Test
    void a_pair_can_be_matched() {
        Cut rack = told(counted(PieceCount.TWO, cut("rack", "10")), matching(WITHIN_50_G));
        keepsTheRules(Sheet.of(rack, rest("mince")));
    }

    @Test
    void what_is_cut_from_a_pair_is_a_pair() {
        Cut topside = told(cut("topside", "20"), matching(new Matching.Alike()));
        keepsTheRules(Sheet.of(counted(PieceCount.TWO, cut("leg", "33", topside, rest("mince"))), rest("mince")));
    }

    @Test
    void a_single_piece_has_no_other_to_match() {
        Cut neck = told(counted(PieceCount.ONE, cut("neck", "4")), matching(WITHIN_50_G));
        Diagnostic finding = only(Sheet.of(neck, rest("mince")), BenchCode.PAIR_OF_ONE);
        assertEquals("neck, matching", where(finding.place()));
    }

    @Test
    void a_part_comes_after_what_lies_beside_it() {
        keepsTheRules(Sheet.of(after(cut("leg", "40"), "chump"), cut("chump", "60")));
        Diagnostic finding =
                only(Sheet.of(after(cut("leg", "40"), "chmup"), cut("chump", "60")), BenchCode.UNKNOWN_TURN);
        assertEquals("leg, turn", where(finding.place()));
        assertEquals(List.of("Did you mean “chump”?"), finding.help());
    }

    @Test
    void bones_and_trims_have_their_turn_too() {
        Part fat = new Part.Trim(
                name("fat"), new TrimRule.FatCover(List.of()), share("5"), to("mince"), List.of(name("bark")));
        breaks(Sheet.of(cut("leg", "40", fat), rest("mince")), BenchCode.UNKNOWN_TURN);
        Part bone = new Part.Bone(name("rib"), List.of(name("rib")), share("5"), to("mince"), List.of(name("rib")));
        breaks(Sheet.of(cut("leg", "40", bone), rest("mince")), BenchCode.TURNS_GO_ROUND);
    }

    @Test
    void a_round_is_told_once_by_those_that_are_in_it() {
        Diagnostic finding = only(
                Sheet.of(
                        after(cut("flank", "10"), "leg"),
                        after(cut("leg", "30"), "chump"),
                        after(cut("chump", "20"), "rack"),
                        after(cut("rack", "10"), "leg"),
                        cut("neck", "30")),
                BenchCode.TURNS_GO_ROUND);
        assertEquals(
                "No order of work is left for the carcass: leg, chump and rack wait for one another.",
                finding.message());
        assertEquals("leg, turn", where(finding.place()));
    }

    @Test
    void silverskin_is_scored_or_removed_and_not_both() {
        Bench scored = new Bench(
                new Matching.NotStated(),
                AnatomicalCount.NOT_STATED,
                List.of(new Treatment(Treatment.Kind.SCORED, name("silverskin"), "")),
                List.of(),
                1);
        keepsTheRules(Sheet.of(told(cut("leg", "40", trim("membrane", "1")), scored), rest("mince")));
        Diagnostic finding = only(
                Sheet.of(told(cut("leg", "40", trim("silverskin", "1")), scored), rest("mince")),
                BenchCode.TREATED_AND_REMOVED);
        assertEquals("The silverskin of the leg is to be scored and removed as well.", finding.message());
        assertEquals("leg, treatment", where(finding.place()));
    }

    @Test
    void six_to_eight_ribs_are_a_choice_and_fourteen_are_not_there() {
        keepsTheRules(
                Sheet.of(told(cut("rack", "40"), ribs(6, 8)), rest("mince")).of(Sheep.sheep()));
        Diagnostic finding = only(
                Sheet.of(told(cut("rack", "40"), ribs(6, 14)), rest("mince")).of(Sheep.sheep()), TreeCode.NO_SUCH_RIB);
        assertEquals("rack, rib_count", where(finding.place()));
    }

    @Test
    void ribs_6_to_13_are_8_ribs() {
        keepsTheRules(Sheet.of(told(cut("rack", "40"), ribs(8, 8), new Landmark.Ribs(6, 13)), rest("mince")));
        keepsTheRules(Sheet.of(told(cut("rack", "40"), ribs(6, 8), new Landmark.Ribs(6, 13)), rest("mince")));
        assertEquals(
                "The rack is to have 7 ribs, but ribs 6 to 13 are 8.",
                only(
                                Sheet.of(told(cut("rack", "40"), ribs(7, 7), new Landmark.Ribs(6, 13)), rest("mince")),
                                BenchCode.RIBS_DIFFER)
                        .message());
    }

    private static Landmark.End end(String mm, String at) {
        return new Landmark.End(Quantity.of(mm, Unit.MILLIMETRE), false, name("the eye"), at);
    }

    private static Sheet cutAt(Landmark.End... ends) {
        return Sheet.of(told(cut("loin", "40"), Bench.NONE, new Landmark.AtDistance(List.of(ends))), rest("mince"));
    }

    @Test
    void two_distances_are_for_two_ends() {
        keepsTheRules(cutAt(end("75", "")));
        keepsTheRules(cutAt(end("25", "the rib end"), end("40", "the rump end")));
        breaks(cutAt(end("25", ""), end("40", "the rump end")), BenchCode.ENDS_NOT_TOLD_APART);
        breaks(cutAt(end("25", "the rib end"), end("40", "The rib end")), BenchCode.ENDS_NOT_TOLD_APART);
        breaks(cutAt(end("1", "a"), end("2", "b"), end("3", "c")), BenchCode.ENDS_NOT_TOLD_APART);
        breaks(cutAt(), BenchCode.ENDS_NOT_TOLD_APART);
        breaks(cutAt(end("-1", "")), BenchCode.BELOW_NOTHING);
    }
}
