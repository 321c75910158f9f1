package dev.gambrel.compiler.lower;

import static dev.gambrel.compiler.Compiled.codes;
import static dev.gambrel.compiler.Compiled.messages;
import static dev.gambrel.compiler.Compiled.sheet;
import static dev.gambrel.compiler.Compiled.text;
import static dev.gambrel.compiler.Compiled.tree;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertInstanceOf;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.code.MeaningCode;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.BoneState;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Landmark;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.anatomy.PieceCount;
import dev.gambrel.tree.anatomy.Reference;
import dev.gambrel.tree.anatomy.SkeletonPoint;
import dev.gambrel.tree.anatomy.SpineRegion;
import java.util.List;
import org.junit.jupiter.api.Test;

class SheetsTest {
    private static Cut leg(String line, String... inside) {
        return (Cut) tree("cut leg " + line + " {\n" + String.join("\n", inside) + "\n}\nrest -> mince\n")
                .parts()
                .get(0);
    }

    private static Landmark landmark(String line) {
        return leg("33 %", line).description().separations().get(0).landmark();
    }

    @Test
    void the_head_of_a_sheet_says_what_it_is_of() {
        var tree = tree("rest -> mince\n");
        assertEquals("Marram hogget", tree.specification().title());
        assertEquals(3, tree.specification().revision());
        assertEquals(TradeName.of("sheep"), tree.species().name());
        assertEquals(Basis.COLD, tree.carcass().basis());
    }

    @Test
    void a_cut_is_sold_under_its_own_name_unless_an_arrow_sends_it() {
        assertInstanceOf(Home.Product.class, leg("33 %").home());
        Cut neck = (Cut) tree("cut neck 4 % -> mince\nrest -> mince\n").parts().get(0);
        assertEquals(new Home.ToStream(TradeName.of("mince")), neck.home());
    }

    @Test
    void a_cut_keeps_its_count_and_whether_bone_is_in() {
        Cut leg = leg("33 %, two per carcass, part boned");
        assertEquals(PieceCount.TWO, leg.pieces());
        assertEquals(BoneState.PART_BONED, leg.description().boneState());
        assertEquals(PieceCount.NOT_STATED, leg("33 %").pieces());
        assertEquals(BoneState.NOT_STATED, leg("33 %").description().boneState());
    }

    @Test
    void bones_are_taken_out_together() {
        Part.Bone bone = (Part.Bone)
                leg("33 %", "bone femur and patella 8 % -> bones").parts().get(0);
        assertEquals(List.of(TradeName.of("femur"), TradeName.of("patella")), bone.bones());
    }

    @Test
    void a_landmark_is_kept_as_what_it_is() {
        assertEquals(
                new Landmark.Between(new SkeletonPoint.Rib(5), new SkeletonPoint.Rib(6)),
                landmark("separate by knife and saw between rib 5 and rib 6"));
        assertEquals(
                new Landmark.Between(
                        new SkeletonPoint.LastVertebra(SpineRegion.LUMBAR),
                        new SkeletonPoint.Vertebra(SpineRegion.SACRAL, 1)),
                landmark("separate by saw between the last lumbar and the first sacral vertebra"));
        assertEquals(new Landmark.InWords("by eye"), landmark("separate by knife \"by eye\""));
        assertInstanceOf(Landmark.NotStated.class, landmark("separate by knife"));
    }

    @Test
    void numbers_of_schemes_are_kept_as_printed() {
        assertEquals(
                List.of(new Reference(TradeName.of("UNECE"), "4800", "2006")),
                leg("33 %", "reference UNECE 4800 edition 2006").description().references());
    }

    @Test
    void a_carcass_goes_from_the_hoof_to_the_block_and_not_back() {
        var step = tree("from warm to cold, loss chill shrink 2 % ± 0.4 %\nrest -> mince\n")
                .carcass()
                .steps()
                .get(0);
        assertEquals(TradeName.of("chill shrink"), step.loss());
        assertEquals(
                List.of("A carcass does not go from cold to warm."),
                messages(sheet("from cold to warm, loss chill shrink 2 %\nrest -> mince\n")));
    }

    @Test
    void the_first_line_says_which_language_it_is() {
        assertTrue(codes(text("cut leg 33 %\n")).contains(MeaningCode.NO_LANGUAGE));
        assertTrue(codes(text("language 2\n")).contains(MeaningCode.UNKNOWN_LANGUAGE));
    }

    @Test
    void a_line_belongs_where_it_says_something() {
        assertEquals(List.of(MeaningCode.MISPLACED_LINE), codes(sheet("portion steak 180 g\nrest -> mince\n")));
        assertEquals(List.of(MeaningCode.MISPLACED_CLAUSE), codes(sheet("rest, boneless -> mince\n")));
        assertEquals(List.of(MeaningCode.SAID_TWICE), codes(sheet("cut leg 33 %, boneless, bone in\nrest -> mince\n")));
    }
}
