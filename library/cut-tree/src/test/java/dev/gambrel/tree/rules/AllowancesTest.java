package dev.gambrel.tree.rules;

import static dev.gambrel.tree.Sheep.figure;
import static dev.gambrel.tree.Sheep.published;
import static dev.gambrel.tree.Sheet.cut;
import static dev.gambrel.tree.Sheet.rest;
import static dev.gambrel.tree.rules.Held.path;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Severity;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.limits.Limits;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Allowance;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Sheep;
import dev.gambrel.tree.Sheet;
import dev.gambrel.tree.Source;
import dev.gambrel.tree.Specification;
import dev.gambrel.tree.Standing;
import dev.gambrel.tree.Stream;
import dev.gambrel.tree.Way;
import dev.gambrel.tree.allowance.AllowanceCode;
import dev.gambrel.tree.allowance.AllowedWarning;
import dev.gambrel.tree.anatomy.PieceCount;
import dev.gambrel.tree.choice.Choice;
import dev.gambrel.tree.inspection.TreeCode;
import dev.gambrel.tree.term.Judged;
import java.util.Arrays;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A house may accept a warning for a part, with a reason; the leg here may be heavier than an invented book says. */
class AllowancesTest {
    private static final String WHY = "our leg keeps the chump";

    private static CutTree tree(String leg, Allowance... allowances) {
        return allowing(
                Sheet.of(cut("saddle", "60", cut("leg", leg), rest("mince")), rest("mince"))
                        .of(Sheep.species(
                                published("leg", figure("32", "carcass", "book"), figure("33", "carcass", "book"))))
                        .citing("book", Source.Kind.PUBLISHED)
                        .tree(),
                allowances);
    }

    private static CutTree allowing(CutTree tree, Allowance... allowances) {
        return new CutTree(
                new Specification("Marram hogget", 3, Standing.NOT_STATED, List.of(allowances)),
                tree.carcass(),
                tree.species(),
                tree.streams(),
                tree.sources(),
                tree.parts(),
                tree.notes());
    }

    private static Allowance allow(String finding, String... path) {
        return new Allowance(path(path), finding, WHY);
    }

    private static List<Code> codes(CutTree tree) {
        return TreeRules.check(tree).stream().map(Diagnostic::code).toList();
    }

    @ParameterizedTest
    @ValueSource(strings = {"outside-published", "G0801", "Outside-Published"})
    void an_accepted_warning_is_not_listed_and_can_be_asked_for_with_its_reason(String finding) {
        CutTree tree = tree("80", allow(finding, "saddle", "leg"));
        assertEquals(List.of(), codes(tree));
        AllowedWarning allowed = TreeRules.allowed(tree).get(0);
        assertEquals(TreeCode.OUTSIDE_PUBLISHED, allowed.finding().code());
        assertEquals(WHY, allowed.allowance().reason());
        assertEquals(1, TreeRules.allowed(tree).size());
    }

    @Test
    void it_is_accepted_in_the_braces_of_the_cut_also_where_that_is_cut_in_one_of_several_ways() {
        Cut halves = cut("halves", "", cut("leg", "80"), rest("mince"));
        Cut whole = cut("whole", "", cut("leg", "80"), rest("mince"));
        Cut saddle = cut("saddle", "60", way(halves, new Choice.AsARule()), way(whole, new Choice.OnRequest()));
        CutTree tree = Sheet.of(saddle, rest("mince"))
                .of(Sheep.species(published("leg", figure("32", "carcass", "book"), figure("33", "carcass", "book"))))
                .citing("book", Source.Kind.PUBLISHED)
                .tree();
        assertEquals(
                List.of(TreeCode.OUTSIDE_PUBLISHED),
                codes(allowing(tree, allow("outside-published", "saddle", "whole", "leg"))));
        assertEquals(
                List.of(TreeCode.OUTSIDE_PUBLISHED, TreeCode.OUTSIDE_PUBLISHED, AllowanceCode.UNUSED_ALLOWANCE),
                codes(allowing(tree, allow("outside-published", "saddle", "whole"))));
    }

    private static Part way(Cut work, Choice choice) {
        return new Way(Sheet.counted(PieceCount.NOT_STATED, work), choice);
    }

    @Test
    void it_is_accepted_for_the_cut_that_it_is_written_for_and_not_for_the_cuts_in_it() {
        assertEquals(
                List.of(TreeCode.OUTSIDE_PUBLISHED, AllowanceCode.UNUSED_ALLOWANCE),
                codes(tree("80", allow("outside-published", "saddle"))));
        assertEquals(
                List.of(TreeCode.OUTSIDE_PUBLISHED, AllowanceCode.UNUSED_ALLOWANCE),
                codes(tree("80", allow("outside-published"))));
    }

    @Test
    void what_is_accepted_for_a_cut_holds_for_its_own_lines() {
        Stream.Lean lean = new Stream.Lean.Stated(Quantity.of("95", Unit.PERCENT), Judged.VISUAL);
        Part femur = new Part.Bone(
                Sheet.name("femur"), List.of(Sheet.name("femur")), Sheet.share("7"), Sheet.to("lean mince"));
        CutTree tree = Sheet.of(cut("leg", "33", femur, rest("mince")), rest("mince"))
                .with(new Stream(Sheet.name("lean mince"), Stream.Kind.SALEABLE, lean))
                .tree();
        assertEquals(List.of(TreeCode.BONE_IN_LEAN), codes(tree));
        assertEquals(List.of(), codes(allowing(tree, allow("bone-in-lean", "leg"))));
    }

    @Test
    void who_accepts_what_is_not_there_is_told() {
        assertEquals(
                List.of(AllowanceCode.UNUSED_ALLOWANCE),
                codes(tree("53", allow("outside-published", "saddle", "leg"))));
        assertEquals(
                List.of(AllowanceCode.UNUSED_ALLOWANCE), codes(tree("53", allow("outside-published", "no such cut"))));
    }

    @Test
    void while_something_could_not_be_read_nothing_is_called_unused() {
        CutTree tree = tree("53", allow("outside-published", "saddle", "leg"));
        assertEquals(List.of(), TreeRules.check(tree, Limits.DEFAULT, Set.of(path("saddle", "unreadable line"))));
    }

    @Test
    void while_there_is_an_error_nothing_is_called_unused() {
        CutTree tree = tree("153", allow("lone-spread", "saddle"));
        assertEquals(List.of(TreeCode.SHARE_OUT_OF_RANGE, TreeCode.OUTSIDE_PUBLISHED), codes(tree));
    }

    static java.util.stream.Stream<Code> whatCannotBeAllowed() {
        return java.util.stream.Stream.concat(
                        Arrays.stream(TreeCode.values()), Arrays.<Code>stream(AllowanceCode.values()))
                .filter(code -> code.severity() == Severity.ERROR || code instanceof AllowanceCode);
    }

    @ParameterizedTest
    @MethodSource("whatCannotBeAllowed")
    void an_error_cannot_be_accepted_nor_an_allowance_that_is_unused(Code code) {
        assertEquals(List.of(AllowanceCode.NOT_ALLOWABLE), codes(tree("53", allow(code.slug()))));
        assertEquals(List.of(AllowanceCode.NOT_ALLOWABLE), codes(tree("53", allow(code.id()))));
    }

    @Test
    void a_reason_is_not_left_out() {
        CutTree tree = tree("80", new Allowance(path("saddle", "leg"), "outside-published", " "));
        assertEquals(List.of(AllowanceCode.NO_REASON), codes(tree));
    }

    @Test
    void a_warning_is_accepted_once() {
        CutTree tree = tree("80", allow("G0801", "saddle", "leg"), allow("outside-published", "saddle", "leg"));
        assertEquals(List.of(AllowanceCode.ALLOWED_TWICE), codes(tree));
    }

    @Test
    void a_misspelt_warning_is_asked_about_and_not_told_as_well() {
        Diagnostic finding = TreeRules.check(tree("80", allow("outside-publishd", "saddle", "leg")))
                .get(0);
        assertEquals(AllowanceCode.UNKNOWN_WARNING, finding.code());
        assertEquals(List.of("Did you mean: allow outside-published \"the reason\""), finding.help());
        assertEquals(
                1,
                TreeRules.check(tree("80", allow("outside-publishd", "saddle", "leg")))
                        .size());
    }

    @Test
    void nothing_of_what_stands_in_json_makes_it_throw() {
        CutTree tree =
                tree("53", new Allowance(TreePath.ROOT, "", ""), new Allowance(TreePath.ROOT, "/".repeat(999), ""));
        assertEquals(List.of(AllowanceCode.UNKNOWN_WARNING, AllowanceCode.UNKNOWN_WARNING), codes(tree));
    }
}
