package dev.gambrel.yields.comparison;

import static dev.gambrel.yields.Sheet.cut;
import static dev.gambrel.yields.Sheet.hogget;
import static dev.gambrel.yields.Sheet.loss;
import static dev.gambrel.yields.Sheet.name;
import static dev.gambrel.yields.Sheet.pair;
import static dev.gambrel.yields.Sheet.rest;
import static dev.gambrel.yields.Sheet.to;
import static dev.gambrel.yields.Sheet.trim;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.BoneState;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Description;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.Stream;
import dev.gambrel.tree.anatomy.Reference;
import dev.gambrel.tree.anatomy.Species;
import dev.gambrel.tree.portion.Limit;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What is one change, and what only follows from it. */
class ComparisonTest {
    private static final CutTree HOGGET = house("33", "20.5");

    private static CutTree house(String leg, String topside) {
        return hogget(
                pair("leg", leg, cut("topside", topside, trim("fat", "4", "waste")), loss("saw", "0.5"), rest("mince")),
                rest("diced"));
    }

    private static Change only(CutTree before, CutTree after) {
        List<Change> changes = Comparison.of(before, after).changes();
        assertEquals(1, changes.size(), changes.toString());
        return changes.get(0);
    }

    private static TreePath path(String... names) {
        TreePath path = TreePath.ROOT;
        for (String name : names) {
            path = path.then(name(name));
        }
        return path;
    }

    @Test
    void a_share_that_alters_all_below_it_is_one_change_and_the_rest_that_makes_way_is_named_with_it() {
        Change change = only(HOGGET, house("34", "20.5"));
        assertEquals(Effect.ALTERS_FIGURES, change.effect());
        assertEquals(Aspect.SHARE, change.aspect());
        assertEquals(path("leg"), change.path());
        assertEquals(List.of(path("rest")), change.givesWay());
    }

    @Test
    void of_a_share_both_exact_figures_are_told() {
        Change change = only(HOGGET, house("33", "21"));
        Said.Stated was = (Said.Stated) change.was();
        Said.Stated is = (Said.Stated) change.is();
        assertEquals(List.of(Quantity.of("20.5", Unit.PERCENT)), was.quantities());
        assertEquals(List.of(Quantity.of("21", Unit.PERCENT)), is.quantities());
        assertEquals("21 %", is.words());
    }

    @Test
    void where_a_cut_is_only_trimmed_what_is_left_of_it_makes_way() {
        CutTree before = hogget(cut("topside", "7", trim("fat", "4", "waste")), rest("diced"));
        CutTree after = hogget(cut("topside", "7", trim("fat", "5", "waste")), rest("diced"));
        assertEquals(List.of(path("topside")), only(before, after).givesWay());
    }

    @Test
    void a_cut_that_is_gone_does_not_list_what_was_in_it() {
        Change change = only(HOGGET, hogget(rest("diced")));
        assertEquals(Effect.BREAKS, change.effect());
        assertEquals("leg", change.of());
        assertTrue(change.is() instanceof Said.NotThere);
        assertEquals(List.of(path("rest")), change.givesWay());
    }

    @Test
    void a_cut_that_is_now_a_trim_is_one_change() {
        CutTree before = hogget(cut("tail", "1", trim("fat", "4", "waste")), rest("diced"));
        CutTree after = hogget(trim("tail", "1", "waste"), rest("diced"));
        assertEquals(Effect.BREAKS, only(before, after).effect());
    }

    @Test
    void parts_in_another_order_are_no_difference() {
        CutTree before = hogget(cut("neck", "12"), cut("flank", "15"), rest("diced"));
        CutTree after = hogget(rest("diced"), cut("flank", "15"), cut("neck", "12"));
        assertTrue(Comparison.of(before, after).isEmpty());
    }

    @Test
    void two_point_nine_pounds_written_in_kilograms_is_only_worded_otherwise() {
        CutTree before = portioned(Quantity.of("2.9", Unit.POUND));
        CutTree after = portioned(Quantity.of("1.315417873", Unit.KILOGRAM));
        assertEquals(Effect.REWORDS, only(before, after).effect());
    }

    private static CutTree portioned(Quantity target) {
        Cut saddle = cut("saddle", "16");
        Portion joint = Portion.byWeight(name("joint"), new Expected.Mean(target), new Limit.NotStated(), to("mince"));
        return hogget(
                new Cut(
                        saddle.name(),
                        saddle.pieces(),
                        saddle.share(),
                        saddle.description(),
                        List.of(),
                        saddle.home(),
                        List.of(joint)),
                rest("diced"));
    }

    @Test
    void the_share_of_the_carcass_follows_from_the_share_of_the_leg() {
        Change change = only(alsoOfCarcass("33", "6.6"), alsoOfCarcass("30", "6"));
        assertEquals(path("leg"), change.path());
    }

    private static CutTree alsoOfCarcass(String leg, String ofCarcass) {
        Share.Derived derived = new Share.Derived(mean(ofCarcass), name("carcass"));
        Share both = new Share.Stated(mean("20"), List.of(derived), List.of());
        Cut topside = cut("topside", "20");
        Cut said = new Cut(
                topside.name(), topside.pieces(), both, topside.description(), List.of(), topside.home(), List.of());
        return hogget(pair("leg", leg, said, rest("mince")), rest("diced"));
    }

    private static Expected mean(String percent) {
        return new Expected.Mean(Quantity.of(percent, Unit.PERCENT));
    }

    @Test
    void a_cut_under_another_name_with_the_same_number_is_asked_about_and_both_are_told() {
        CutTree before = hogget(numbered("chump", "4790"), rest("diced"));
        CutTree after = hogget(numbered("rump", "4790"), rest("diced"));
        Comparison comparison = Comparison.of(before, after);
        assertEquals(
                List.of(Effect.BREAKS, Effect.ADDS),
                comparison.changes().stream().map(Change::effect).toList());
        assertEquals(
                List.of("both have the same reference number"),
                comparison.renames().stream().map(PossibleRename::because).toList());
    }

    @Test
    void what_has_nothing_in_common_is_not_asked_about() {
        CutTree before = hogget(numbered("chump", "4790"), rest("diced"));
        CutTree after = hogget(cut("breast", "9"), rest("diced"));
        assertEquals(List.of(), Comparison.of(before, after).renames());
    }

    private static Part numbered(String called, String number) {
        Cut cut = cut(called, "3");
        Reference reference = new Reference(name("UNECE"), number, "2006");
        Description description =
                new Description(BoneState.NOT_STATED, List.of(), List.of(), List.of(reference), List.of(), List.of());
        return new Cut(cut.name(), cut.pieces(), cut.share(), description, List.of(), cut.home(), List.of());
    }

    @Test
    void where_a_stream_is_replaced_the_routes_into_it_are_part_of_that() {
        List<Stream> streams = HOGGET.streams().stream()
                .map(stream -> stream.name().equals(name("waste"))
                        ? new Stream(name("render"), stream.kind(), stream.lean())
                        : stream)
                .toList();
        Part leg = pair(
                "leg", "33", cut("topside", "20.5", trim("fat", "4", "render")), loss("saw", "0.5"), rest("mince"));
        CutTree after = new CutTree(
                HOGGET.specification(),
                HOGGET.carcass(),
                HOGGET.species(),
                streams,
                List.of(),
                List.of(leg, rest("diced")),
                List.of());
        Comparison comparison = Comparison.of(HOGGET, after);
        assertEquals(
                List.of("stream waste", "stream render"),
                comparison.changes().stream().map(Change::of).toList());
        assertEquals(1, comparison.renames().size());
    }

    @Test
    void another_animal_is_one_change() {
        CutTree deer = new CutTree(
                HOGGET.specification(),
                HOGGET.carcass(),
                Species.unknown(name("deer")),
                HOGGET.streams(),
                HOGGET.sources(),
                HOGGET.parts(),
                HOGGET.notes());
        assertEquals(Effect.BREAKS, only(HOGGET, deer).effect());
    }
}
