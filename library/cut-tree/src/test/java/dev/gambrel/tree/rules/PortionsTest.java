package dev.gambrel.tree.rules;

import static dev.gambrel.tree.Sheet.cut;
import static dev.gambrel.tree.Sheet.name;
import static dev.gambrel.tree.Sheet.portioned;
import static dev.gambrel.tree.Sheet.rest;
import static dev.gambrel.tree.Sheet.to;
import static dev.gambrel.tree.rules.Held.breaks;
import static dev.gambrel.tree.rules.Held.keepsTheRules;
import static dev.gambrel.tree.rules.Held.only;
import static dev.gambrel.tree.rules.Held.where;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.Sheet;
import dev.gambrel.tree.inspection.BenchCode;
import dev.gambrel.tree.inspection.TreeCode;
import dev.gambrel.tree.portion.Acceptance;
import dev.gambrel.tree.portion.Aim;
import dev.gambrel.tree.portion.Fewest;
import dev.gambrel.tree.portion.Finish;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.tree.portion.Measure;
import dev.gambrel.tree.portion.Precedence;
import dev.gambrel.tree.portion.Slicing;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

class PortionsTest {
    private static final Limit OPEN = new Limit.NotStated();
    private static final Measure UNSAID = new Measure.NotStated();
    private static final Aim STEAK = new Aim.Weight(new Expected.Mean(grams("180")));
    private static final Aim CHOP = new Aim.Thickness(new Expected.Mean(mm("25")));
    private static final Aim BOTH =
            new Aim.WeightAndThickness(new Expected.Mean(grams("180")), new Expected.Mean(mm("22")));

    private static Quantity grams(String amount) {
        return Quantity.of(amount, Unit.GRAM);
    }

    private static Quantity mm(String amount) {
        return Quantity.of(amount, Unit.MILLIMETRE);
    }

    private static Acceptance accepted(Limit weight, Limit thickness, Precedence rules) {
        return new Acceptance(weight, thickness, rules, UNSAID, new Fewest.NotStated());
    }

    private static Slicing sliced(String kerf, String length) {
        return new Slicing(new Measure.Stated(mm(kerf)), new Slicing.Length.Stated(new Expected.Mean(mm(length))), "");
    }

    private static Sheet sheet(Aim aim, Acceptance acceptance, Slicing slicing, Finish finish, Home remainder) {
        Portion portion = new Portion(
                name("steak"), aim, acceptance, slicing, finish, new Portion.EndPieces.NotStated(), remainder);
        return Sheet.of(portioned(cut("leg", "40"), portion), rest("mince"));
    }

    private static Sheet sheet(Aim aim, Acceptance acceptance, Slicing slicing) {
        return sheet(aim, acceptance, slicing, Finish.NONE, to("mince"));
    }

    private static Sheet sheet(Aim aim, Acceptance acceptance) {
        return sheet(aim, acceptance, Slicing.NONE);
    }

    @Test
    void a_weight_a_thickness_or_a_number_is_enough() {
        keepsTheRules(sheet(STEAK, Acceptance.NONE));
        keepsTheRules(sheet(CHOP, Acceptance.NONE));
        keepsTheRules(sheet(new Aim.Number(2), Acceptance.NONE));
    }

    @Test
    void a_piece_that_is_divided_by_number_leaves_nothing_to_send() {
        keepsTheRules(sheet(new Aim.Number(2), Acceptance.NONE, Slicing.NONE, Finish.NONE, new Home.NotStated()));
        breaks(
                sheet(CHOP, Acceptance.NONE, Slicing.NONE, Finish.NONE, new Home.NotStated()),
                TreeCode.REMAINDER_NO_HOME);
    }

    @Test
    void with_weight_and_thickness_one_rules() {
        Diagnostic asked = only(sheet(BOTH, Acceptance.NONE), BenchCode.PRECEDENCE_NOT_STATED);
        assertEquals("leg / steak, name", where(asked.place()));
        assertEquals(List.of("Say which is kept: weight rules, or thickness rules."), asked.help());
        keepsTheRules(sheet(BOTH, accepted(OPEN, OPEN, Precedence.WEIGHT)));
    }

    @Test
    void a_limit_on_the_other_figure_asks_which_rules_as_well() {
        Limit thick = new Limit.AtLeast(Quantity.of("0.75", Unit.INCH));
        breaks(sheet(STEAK, accepted(OPEN, thick, Precedence.NOT_STATED)), BenchCode.PRECEDENCE_NOT_STATED);
        keepsTheRules(sheet(STEAK, accepted(OPEN, thick, Precedence.WEIGHT)));
        Limit heavy = new Limit.AtMost(grams("200"));
        breaks(sheet(CHOP, accepted(heavy, OPEN, Precedence.NOT_STATED)), BenchCode.PRECEDENCE_NOT_STATED);
    }

    @ParameterizedTest
    @EnumSource(
            value = Precedence.class,
            names = {"WEIGHT", "THICKNESS"})
    void nothing_rules_where_only_one_is_written(Precedence rules) {
        breaks(sheet(STEAK, accepted(OPEN, OPEN, rules)), BenchCode.PRECEDENCE_OF_ONE);
        breaks(sheet(CHOP, accepted(OPEN, OPEN, rules)), BenchCode.PRECEDENCE_OF_ONE);
    }

    @Test
    void what_is_aimed_at_is_accepted_weight_and_thickness_alike() {
        Limit thin = new Limit.Between(mm("18"), mm("20"));
        Diagnostic finding =
                only(sheet(CHOP, accepted(OPEN, thin, Precedence.NOT_STATED)), TreeCode.TARGET_OUTSIDE_RANGE);
        assertEquals("The target of 25 mm lies outside its own range, 18 mm to 20 mm.", finding.message());
        assertEquals("leg / steak, thickness", where(finding.place()));
        assertEquals(
                "leg / steak, thickness_limit", where(finding.related().get(0).place()));
    }

    @Test
    void a_target_at_its_limit_is_accepted_and_one_past_it_is_not() {
        keepsTheRules(sheet(STEAK, Acceptance.of(new Limit.AtLeast(grams("180")))));
        keepsTheRules(sheet(STEAK, Acceptance.of(new Limit.AtMost(grams("180")))));
        assertEquals(
                "The target of 180 g is under its own limit of 181 g.",
                only(sheet(STEAK, Acceptance.of(new Limit.AtLeast(grams("181")))), BenchCode.TARGET_PAST_LIMIT)
                        .message());
        assertEquals(
                "The target of 180 g is over its own limit of 179 g.",
                only(sheet(STEAK, Acceptance.of(new Limit.AtMost(grams("179")))), BenchCode.TARGET_PAST_LIMIT)
                        .message());
    }

    @Test
    void a_kerf_is_of_slices() {
        Slicing saw = new Slicing(new Measure.Stated(mm("2")), new Slicing.Length.NotStated(), "");
        keepsTheRules(sheet(CHOP, Acceptance.NONE, saw));
        assertEquals(
                "leg / steak, kerf",
                where(only(sheet(STEAK, Acceptance.NONE, saw), BenchCode.KERF_WITHOUT_THICKNESS)
                        .place()));
    }

    @Test
    void a_slice_is_no_thicker_than_the_piece_is_long() {
        keepsTheRules(sheet(CHOP, Acceptance.NONE, sliced("0", "25")));
        breaks(sheet(CHOP, Acceptance.NONE, sliced("0", "24")), BenchCode.SLICE_LONGER_THAN_PIECE);
    }

    @Test
    void the_smallest_that_counts_is_smaller_than_the_target() {
        Measure same = new Measure.Stated(grams("180"));
        Measure less = new Measure.Stated(grams("150"));
        breaks(
                sheet(STEAK, new Acceptance(OPEN, OPEN, Precedence.NOT_STATED, same, new Fewest.NotStated())),
                BenchCode.SMALLEST_NOT_SMALLER);
        keepsTheRules(sheet(STEAK, new Acceptance(OPEN, OPEN, Precedence.NOT_STATED, less, new Fewest.NotStated())));
    }

    @ParameterizedTest
    @ValueSource(ints = {0, -1, Integer.MIN_VALUE})
    void there_is_at_least_one_of_whatever_is_counted(int number) {
        breaks(sheet(new Aim.Number(number), Acceptance.NONE), BenchCode.COUNT_NOT_POSITIVE);
        Fewest none = new Fewest.From(number, Fewest.Whole.SIDE);
        breaks(
                sheet(CHOP, new Acceptance(OPEN, OPEN, Precedence.NOT_STATED, UNSAID, none)),
                BenchCode.COUNT_NOT_POSITIVE);
        breaks(finished(new Finish.Binding.Tied(number)), BenchCode.COUNT_NOT_POSITIVE);
        Finish packed =
                new Finish(new Finish.Binding.NotStated(), new Finish.Pack.Together(number, name("bag")), List.of());
        breaks(sheet(STEAK, Acceptance.NONE, Slicing.NONE, packed, to("mince")), BenchCode.COUNT_NOT_POSITIVE);
    }

    private static Sheet finished(Finish.Binding binding) {
        Finish finish = new Finish(binding, new Finish.Pack.NotStated(), List.of());
        return sheet(STEAK, Acceptance.NONE, Slicing.NONE, finish, to("mince"));
    }

    @Test
    void lengths_are_more_than_nothing() {
        breaks(finished(new Finish.Binding.TiedEvery(mm("0"))), BenchCode.MEASURE_NOT_POSITIVE);
        breaks(finished(new Finish.Binding.Netted(mm("-1"))), BenchCode.MEASURE_NOT_POSITIVE);
        breaks(sheet(new Aim.Thickness(new Expected.Mean(mm("0"))), Acceptance.NONE), BenchCode.MEASURE_NOT_POSITIVE);
        breaks(sheet(CHOP, Acceptance.NONE, sliced("2", "0")), BenchCode.MEASURE_NOT_POSITIVE);
    }

    @Test
    void kerf_and_tare_are_not_less_than_nothing() {
        keepsTheRules(sheet(CHOP, Acceptance.NONE, sliced("0", "200")));
        breaks(sheet(CHOP, Acceptance.NONE, sliced("-1", "200")), BenchCode.BELOW_NOTHING);
        Finish twine = new Finish(
                new Finish.Binding.Tied(4),
                new Finish.Pack.NotStated(),
                List.of(new Finish.Tare(name("net"), grams("0")), new Finish.Tare(name("twine"), grams("-5"))));
        Diagnostic finding =
                only(sheet(STEAK, Acceptance.NONE, Slicing.NONE, twine, to("mince")), BenchCode.BELOW_NOTHING);
        assertEquals("The tare of the twine of -5 g is less than nothing.", finding.message());
        assertEquals("leg / steak, tare 1", where(finding.place()));
    }

    @Test
    void end_pieces_go_to_a_stream_that_there_is() {
        Portion portion = new Portion(
                name("steak"),
                STEAK,
                Acceptance.NONE,
                Slicing.NONE,
                Finish.NONE,
                new Portion.EndPieces.Sent(to("bin")),
                to("mince"));
        Diagnostic finding =
                only(Sheet.of(portioned(cut("leg", "40"), portion), rest("mince")), TreeCode.UNKNOWN_STREAM);
        assertEquals("leg / steak, end_pieces", where(finding.place()));
    }

    @Test
    void a_number_from_a_side_asks_more_of_a_piece_that_lies_across_both() {
        assertEquals(7, new Fewest.From(7, Fewest.Whole.SIDE).fromOnePiece(2));
        assertEquals(14, new Fewest.From(7, Fewest.Whole.SIDE).fromOnePiece(1));
        assertEquals(4, new Fewest.From(7, Fewest.Whole.CARCASS).fromOnePiece(2));
        assertEquals(7, new Fewest.From(7, Fewest.Whole.PIECE).fromOnePiece(2));
    }
}
