package dev.gambrel.compiler.lower;

import static dev.gambrel.compiler.Compiled.tree;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Landmark;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.TrimRule;
import dev.gambrel.tree.anatomy.AnatomicalCount;
import dev.gambrel.tree.bench.Bench;
import dev.gambrel.tree.bench.Matching;
import dev.gambrel.tree.bench.Treatment;
import java.util.List;
import org.junit.jupiter.api.Test;

class BenchTest {
    private static final TradeName EYE = TradeName.of("the eye");

    private static Cut cut(String said, String lines) {
        return (Cut) tree("cut loin 30 %" + said + " {\n" + lines + "\n}\ncut leg 33 %\nrest -> mince\n")
                .parts()
                .get(0);
    }

    private static Landmark landmark(String written) {
        return cut("", "separate by knife " + written)
                .description()
                .separations()
                .get(0)
                .landmark();
    }

    private static Quantity mm(String amount) {
        return Quantity.of(amount, Unit.MILLIMETRE);
    }

    @Test
    void a_matched_pair_of_six_to_eight_ribs_by_two_people() {
        Bench bench = cut(", two per carcass, pair matched within 50 g, 6 to 8 ribs, two people, after leg", "")
                .description()
                .bench();
        assertEquals(
                new Bench(
                        new Matching.Within(Quantity.of("50", Unit.GRAM)),
                        new AnatomicalCount(6, 8),
                        List.of(),
                        List.of(TradeName.of("leg")),
                        2),
                bench);
        assertEquals(
                new Matching.Alike(),
                cut(", two per carcass, pair matched", "").description().bench().matching());
        assertEquals(
                new AnatomicalCount(8, 8),
                cut(", 8 ribs", "").description().bench().ribs());
    }

    @Test
    void the_tail_is_cut_straight_from_one_end_to_the_other() {
        assertEquals(
                new Landmark.AtDistance(List.of(
                        new Landmark.End(mm("25"), false, EYE, "the rib end"),
                        new Landmark.End(mm("40"), false, EYE, "the rump end"))),
                landmark("25 mm from the eye at the rib end, 40 mm from the eye at the rump end"));
    }

    @Test
    void one_distance_holds_all_along_and_may_be_a_limit() {
        assertEquals(
                new Landmark.AtDistance(
                        List.of(new Landmark.End(mm("75"), false, TradeName.of("the tail of the eye"), ""))),
                landmark("75 mm from the tail of the eye"));
        assertEquals(
                new Landmark.AtDistance(List.of(new Landmark.End(mm("40"), true, EYE, ""))),
                landmark("at most 40 mm from the eye"));
    }

    @Test
    void lines_are_followed_kept_parallel_to_or_crossed() {
        assertEquals(new Landmark.ParallelTo(TradeName.of("the chine")), landmark("parallel to the chine"));
        assertEquals(new Landmark.RightAnglesTo(TradeName.of("the chine")), landmark("at right angles to the chine"));
        assertEquals(new Landmark.At(TradeName.of("the stifle joint")), landmark("at the stifle joint"));
        assertEquals(new Landmark.Along(TradeName.of("the seam")), landmark("along the seam"));
    }

    @Test
    void fat_is_planed_and_measured_somewhere() {
        Part.Trim fat = (Part.Trim) cut(
                        "",
                        "trim fat to at most 10 mm on average 8 %, planed, practically free,"
                                + " measured \"over the eye\", after fell -> mince\nremove fell 1 % -> mince")
                .parts()
                .get(0);
        assertEquals(new TrimRule.FatFinish(true, true, "over the eye"), ((TrimRule.FatCover) fat.rule()).finish());
        assertEquals(List.of(TradeName.of("fell")), fat.after());
    }

    @Test
    void bones_have_their_turn() {
        Part bone = cut("", "bone rib 7 %, after fell -> bones\nremove fell 1 % -> mince")
                .parts()
                .get(0);
        assertEquals(List.of(TradeName.of("fell")), bone.after());
    }

    @Test
    void silverskin_is_scored_or_left_for_a_reason() {
        TradeName silverskin = TradeName.of("silverskin");
        assertEquals(
                List.of(
                        new Treatment(Treatment.Kind.SCORED, silverskin, ""),
                        new Treatment(Treatment.Kind.LEFT, TradeName.of("membrane"), "for dice")),
                cut("", "score silverskin\nleave membrane \"for dice\"")
                        .description()
                        .bench()
                        .treatments());
    }
}
