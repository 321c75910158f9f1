package dev.gambrel.tree.rules;

import static dev.gambrel.tree.Sheet.counted;
import static dev.gambrel.tree.Sheet.cut;
import static dev.gambrel.tree.Sheet.gland;
import static dev.gambrel.tree.Sheet.parted;
import static dev.gambrel.tree.Sheet.rest;
import static dev.gambrel.tree.rules.Held.breaks;
import static dev.gambrel.tree.rules.Held.keepsTheRules;
import static dev.gambrel.tree.rules.Held.only;
import static dev.gambrel.tree.rules.Held.where;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Landmark;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Sheep;
import dev.gambrel.tree.Sheet;
import dev.gambrel.tree.anatomy.PieceCount;
import dev.gambrel.tree.anatomy.SkeletonPoint;
import dev.gambrel.tree.anatomy.SpineRegion;
import dev.gambrel.tree.inspection.TreeCode;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class AnatomyTest {
    private static Sheet sheep(Part part) {
        return Sheet.of(part, rest("mince")).of(Sheep.sheep());
    }

    private static Sheet partedAt(SkeletonPoint first, SkeletonPoint second) {
        return sheep(parted(cut("loin", "12"), new Landmark.Between(first, second)));
    }

    private static SkeletonPoint rib(int number) {
        return new SkeletonPoint.Rib(number);
    }

    private static SkeletonPoint lumbar(int number) {
        return new SkeletonPoint.Vertebra(SpineRegion.LUMBAR, number);
    }

    /** Thirteen pairs of ribs: vertebral formula of the sheep, C7 T13 L6-7 S4, from memory. */
    @Test
    void a_sheep_has_no_rib_14() {
        keepsTheRules(partedAt(rib(12), rib(13)));
        Diagnostic finding = only(partedAt(rib(13), rib(14)), TreeCode.NO_SUCH_RIB);
        assertEquals("There is no rib 14: the sheep has 13 pairs of ribs.", finding.message());
        assertEquals("loin, separation", where(finding.place()));
    }

    @Test
    void ribs_are_counted_from_one() {
        breaks(partedAt(rib(0), rib(1)), TreeCode.NO_SUCH_RIB);
    }

    @Test
    void the_ribs_of_a_cut_are_ribs_of_the_animal() {
        keepsTheRules(sheep(parted(cut("best end", "9"), new Landmark.Ribs(6, 13))));
        breaks(sheep(parted(cut("best end", "9"), new Landmark.Ribs(6, 14))), TreeCode.NO_SUCH_RIB);
        breaks(sheep(parted(cut("best end", "9"), new Landmark.Ribs(14, 6))), TreeCode.NO_SUCH_RIB);
        breaks(sheep(parted(cut("best end", "9"), new Landmark.Ribs(0, 6))), TreeCode.NO_SUCH_RIB);
    }

    /** Six or seven lumbar vertebrae: vertebral formula of the sheep, from memory. */
    @Test
    void a_sheep_may_have_a_seventh_lumbar_vertebra_but_no_eighth() {
        keepsTheRules(partedAt(lumbar(6), lumbar(7)));
        Diagnostic finding = only(partedAt(lumbar(7), lumbar(8)), TreeCode.NO_SUCH_VERTEBRA);
        assertEquals("There is no lumbar vertebra 8: the sheep has 6 to 7 of them.", finding.message());
        breaks(partedAt(lumbar(0), lumbar(1)), TreeCode.NO_SUCH_VERTEBRA);
    }

    @Test
    void the_last_rib_and_the_last_vertebra_are_always_there() {
        keepsTheRules(partedAt(new SkeletonPoint.LastRib(), new SkeletonPoint.LastVertebra(SpineRegion.LUMBAR)));
    }

    @Test
    void where_nobody_counted_any_number_may_stand() {
        keepsTheRules(partedAt(new SkeletonPoint.Vertebra(SpineRegion.CAUDAL, 20), rib(1)));
        keepsTheRules(Sheet.of(parted(cut("loin", "12"), new Landmark.Between(rib(14), rib(15))), rest("mince")));
    }

    @Test
    void both_sides_of_the_knife_are_looked_at() {
        breaks(partedAt(rib(14), lumbar(8)), TreeCode.NO_SUCH_RIB, TreeCode.NO_SUCH_VERTEBRA);
    }

    @Test
    void a_landmark_in_words_is_not_read() {
        keepsTheRules(sheep(parted(cut("leg", "33"), new Landmark.InWords("rib 99"))));
        keepsTheRules(sheep(parted(cut("leg", "33"), new Landmark.At(Sheet.name("the stifle joint")))));
        keepsTheRules(sheep(parted(cut("leg", "33"), new Landmark.NotStated())));
    }

    @Test
    void the_popliteal_gland_is_taken_out_of_the_leg_and_of_what_is_cut_from_it() {
        keepsTheRules(sheep(cut("leg", "33", gland("popliteal"))));
        keepsTheRules(sheep(cut("leg", "33", cut("topside", "20", gland("popliteal")), rest("mince"))));
        keepsTheRules(sheep(cut("topside", "8", gland("popliteal"))));
    }

    @Test
    void a_gland_of_the_shoulder_is_not_in_the_leg() {
        Diagnostic finding = only(sheep(cut("leg", "33", gland("prescapular"))), TreeCode.GLAND_ELSEWHERE);
        assertEquals("The prescapular gland lies in the shoulder, not in the leg.", finding.message());
        assertEquals("leg / prescapular, name", where(finding.place()));
    }

    @Test
    void a_gland_in_a_house_cut_is_looked_for_in_the_piece_above_it() {
        breaks(
                sheep(cut("leg", "33", cut("house roll", "20", gland("prescapular")), rest("mince"))),
                TreeCode.GLAND_ELSEWHERE);
        keepsTheRules(sheep(cut("house roll", "20", gland("prescapular"))));
    }

    @Test
    void a_gland_that_the_animal_lacks_is_not_known() {
        Diagnostic finding = only(sheep(cut("leg", "33", gland("poplitael"))), TreeCode.UNKNOWN_GLAND);
        assertEquals("The sheep has no gland called poplitael.", finding.message());
        assertEquals(List.of("Did you mean “popliteal”?"), finding.help());
        keepsTheRules(Sheet.of(cut("leg", "33", gland("anything")), rest("mince")));
    }

    @Test
    void a_name_that_means_one_piece_here_and_another_there_is_asked_about() {
        Diagnostic finding = only(sheep(cut("Sirloin", "10")), TreeCode.AMBIGUOUS_NAME);
        assertEquals("“Sirloin” means one piece in one region and another elsewhere.", finding.message());
        assertEquals(List.of("“Sirloin” (US) is the chump.", "“Sirloin” (UK) is the loin."), finding.notes());
    }

    @ParameterizedTest
    @ValueSource(strings = {"chump", "loin", "house cut"})
    void a_pieces_own_name_means_that_piece(String name) {
        keepsTheRules(sheep(cut(name, "10")));
    }

    @ParameterizedTest
    @CsvSource({"leg, TWO", "neck, ONE", "neck, NOT_STATED", "house cut, ONE", "house cut, TWO"})
    void a_cut_comes_as_often_as_the_animal_has_it(String name, PieceCount count) {
        keepsTheRules(sheep(counted(count, cut(name, "10"))));
    }

    @Test
    void a_pair_that_is_written_as_one_is_asked_about() {
        Diagnostic finding = only(sheep(counted(PieceCount.ONE, cut("leg", "33"))), TreeCode.PIECE_COUNT_DIFFERS);
        assertEquals("The leg is written as one per carcass, but a sheep carcass has two.", finding.message());
        assertEquals("leg, count", where(finding.place()));
        breaks(sheep(counted(PieceCount.TWO, cut("neck", "4"))), TreeCode.PIECE_COUNT_DIFFERS);
    }

    @Test
    void a_pair_that_is_not_called_one_is_asked_about_once() {
        Cut leg = cut("leg", "33", counted(PieceCount.NOT_STATED, cut("chump", "10")), rest("mince"));
        Diagnostic finding = only(sheep(counted(PieceCount.NOT_STATED, leg)), TreeCode.PAIR_UNSAID);
        assertEquals(
                "A sheep carcass has two of the leg; nothing here says so, so all of it counts as one piece.",
                finding.message());
        assertEquals("leg, name", where(finding.place()));
    }
}
