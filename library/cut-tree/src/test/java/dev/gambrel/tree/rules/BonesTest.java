package dev.gambrel.tree.rules;

import static dev.gambrel.tree.Sheet.bone;
import static dev.gambrel.tree.Sheet.boneIn;
import static dev.gambrel.tree.Sheet.boneless;
import static dev.gambrel.tree.Sheet.containing;
import static dev.gambrel.tree.Sheet.counted;
import static dev.gambrel.tree.Sheet.cut;
import static dev.gambrel.tree.Sheet.rest;
import static dev.gambrel.tree.rules.Held.only;
import static dev.gambrel.tree.rules.Held.where;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Severity;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Sheep;
import dev.gambrel.tree.Sheet;
import dev.gambrel.tree.anatomy.PieceCount;
import dev.gambrel.tree.inspection.TreeCode;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;

class BonesTest {
    private static Sheet sheep(Part... parts) {
        Part[] all = Stream.concat(Stream.of(parts), Stream.of(rest("mince"))).toArray(Part[]::new);
        return Sheet.of(all).of(Sheep.sheep());
    }

    private static void keepsTheRules(Part... parts) {
        Held.keepsTheRules(sheep(parts));
    }

    private static void breaks(Code code, Part... parts) {
        Held.breaks(sheep(parts), code);
    }

    @Test
    void a_boneless_shank_with_the_bone_in_it_is_not_boneless() {
        Diagnostic finding = only(sheep(boneless(cut("shank", "5"))), TreeCode.BONE_LEFT_IN);
        assertEquals("The shank is called boneless, but tibia went in and never came out.", finding.message());
        assertEquals("shank, bone_state", where(finding.place()));
        keepsTheRules(boneless(cut("shank", "5", bone("tibia", "40"))));
        keepsTheRules(boneIn(cut("shank", "5")));
        keepsTheRules(cut("shank", "5"));
    }

    @Test
    void bones_that_stay_are_named_together() {
        Diagnostic finding = only(sheep(boneless(cut("leg", "33"))), TreeCode.BONE_LEFT_IN);
        assertEquals(
                "The leg is called boneless, but femur, patella, aitch bone and tibia went in and never came out.",
                finding.message());
    }

    @Test
    void a_bone_taken_out_above_does_not_reach_the_cut_below() {
        keepsTheRules(cut("leg", "33", bone("aitch bone", "6"), boneless(cut("chump", "10")), rest("mince")));
        breaks(TreeCode.BONE_LEFT_IN, cut("leg", "33", boneless(cut("chump", "10")), rest("mince")));
    }

    @Test
    void a_bone_that_left_above_cannot_be_taken_out_below() {
        Cut leg =
                cut("leg", "33", bone("aitch bone", "6"), cut("chump", "10", bone("aitch bone", "30")), rest("mince"));
        Diagnostic finding = only(sheep(leg), TreeCode.BONE_NEVER_ENTERED);
        assertEquals("The chump has no aitch bone in it to take out.", finding.message());
        assertEquals("leg / chump / aitch bone, name", where(finding.place()));
        assertEquals("leg / aitch bone, name", where(finding.related().get(0).place()));
        assertEquals(
                "it has left the leg here already", finding.related().get(0).words());
    }

    @Test
    void a_chump_cut_from_beside_the_leg_takes_its_bone_along() {
        Cut leg = boneless(cut("leg", "25", bone("femur and patella", "8"), bone("tibia", "5")));
        keepsTheRules(leg, boneIn(cut("chump", "8")));
        breaks(TreeCode.BONE_LEFT_IN, leg);
        breaks(TreeCode.BONE_NEVER_ENTERED, cut("leg", "25", bone("aitch bone", "6")), cut("chump", "8"));
    }

    @Test
    void the_femur_leaves_once() {
        Cut above = cut("leg", "33", bone("femur", "7"), cut("topside", "20", bone("femur", "7")), rest("mince"));
        breaks(TreeCode.BONE_NEVER_ENTERED, above);
        Cut beside = cut("leg", "33", bone("femur", "7"), bone("femur and patella", "8"), rest("mince"));
        Diagnostic finding = only(sheep(beside), TreeCode.BONE_NEVER_ENTERED);
        assertEquals("leg / femur and patella, name", where(finding.place()));
        assertEquals("leg / femur, name", where(finding.related().get(0).place()));
    }

    @Test
    void two_lines_of_one_name_are_told_once() {
        Cut leg = cut("leg", "33", bone("femur", "7"), bone("femur", "7"), rest("mince"));
        breaks(TreeCode.DUPLICATE_PART, leg);
    }

    @Test
    void a_bone_of_another_cut_cannot_be_taken_out() {
        Diagnostic finding = only(sheep(cut("leg", "33", bone("humerus", "6"))), TreeCode.BONE_NEVER_ENTERED);
        assertEquals("The leg has no humerus in it to take out.", finding.message());
        assertEquals(
                List.of(
                        "Move the line to the cut that the bone lies in, or name the right bone.",
                        "If the house cuts so that it does lie here, say in the braces all the bones that are in it: contains femur, patella, aitch bone, tibia, humerus"),
                finding.help());
    }

    @Test
    void a_bone_of_no_part_of_the_animal_is_not_known() {
        Diagnostic finding = only(sheep(cut("leg", "33", bone("femru", "7"))), TreeCode.UNKNOWN_BONE);
        assertEquals("The sheep has no bone called femru.", finding.message());
        assertEquals(List.of("Did you mean “femur”?"), finding.help());
    }

    @Test
    void a_bone_is_known_by_its_other_names() {
        keepsTheRules(counted(PieceCount.ONE, boneless(cut("neck", "4", bone("Cervical Vertebrae", "30")))));
    }

    @Test
    void a_bone_that_no_part_takes_is_asked_for() {
        Diagnostic finding = only(
                sheep(cut(
                        "leg", "33", bone("femur and patella", "8"), boneIn(cut("shank", "12")), cut("topside", "80"))),
                TreeCode.BONE_UNACCOUNTED);
        assertEquals("No part of the leg takes the aitch bone that went into it.", finding.message());
        assertEquals(Severity.WARNING, finding.severity());
    }

    @Test
    void a_rest_may_take_a_bone_along_unsaid() {
        keepsTheRules(cut("leg", "33", boneIn(cut("shank", "12")), rest("mince")));
    }

    @Test
    void what_a_cut_is_said_to_contain_goes_before_what_is_known_of_its_name() {
        keepsTheRules(boneless(cut("house roll", "10")));
        breaks(TreeCode.BONE_LEFT_IN, containing(boneless(cut("house roll", "10")), "femur"));
        keepsTheRules(containing(boneless(cut("house roll", "10", bone("femur", "20"))), "femur", "semimembranosus"));
        breaks(TreeCode.BONE_NEVER_ENTERED, containing(cut("leg", "33", bone("tibia", "5")), "femur"));
    }

    @Test
    void what_is_said_to_be_contained_is_part_of_the_animal() {
        Diagnostic finding =
                only(sheep(containing(cut("leg", "33"), "femur", "semimembranosis")), TreeCode.UNKNOWN_CONTENTS);
        assertEquals("The sheep has no bone or muscle called semimembranosis.", finding.message());
        assertEquals("leg, contents 1", where(finding.place()));
    }

    @Test
    void of_a_cut_that_the_animal_does_not_know_nothing_is_concluded() {
        keepsTheRules(cut("house cut", "20", bone("femur", "10")));
        keepsTheRules(cut("house cut", "20", cut("inner", "50"), cut("outer", "50")));
    }

    @Test
    void of_an_animal_without_anatomy_nothing_is_concluded() {
        Held.keepsTheRules(Sheet.of(
                boneless(cut("leg", "33", bone("unobtainium", "7"))),
                containing(cut("loin", "12"), "anything"),
                rest("mince")));
    }
}
