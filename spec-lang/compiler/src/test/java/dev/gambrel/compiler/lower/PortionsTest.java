package dev.gambrel.compiler.lower;

import static dev.gambrel.compiler.Compiled.tree;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Portion;
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
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class PortionsTest {
    private static Portion portion(String line) {
        Cut leg = (Cut) tree("cut leg 33 % {\n  portion " + line + "\n}\nrest -> mince\n")
                .parts()
                .get(0);
        return leg.portions().get(0);
    }

    private static Quantity grams(String amount) {
        return Quantity.of(amount, Unit.GRAM);
    }

    private static Quantity mm(String amount) {
        return Quantity.of(amount, Unit.MILLIMETRE);
    }

    @Test
    void weight_and_thickness_and_which_rules() {
        Portion steak = portion("steak 180 g ± 10 g, 20 to 25 mm thick, weight rules, remainder -> mince");
        assertEquals(
                new Aim.WeightAndThickness(
                        new Expected.PlusMinus(grams("180"), grams("10")),
                        new Expected.CentralRange(mm("20"), mm("25"))),
                steak.aim());
        assertEquals(Precedence.WEIGHT, steak.acceptance().precedence());
    }

    @Test
    void eight_ounces_and_not_under_three_quarters_of_an_inch() {
        Portion steak = portion("steak 8 oz ± 1/2 oz, at least 3/4 in thick, weight rules, remainder -> mince");
        Quantity ounces = Quantity.of("8", Unit.OUNCE);
        assertEquals(new Aim.Weight(new Expected.PlusMinus(ounces, Quantity.of("0.5", Unit.OUNCE))), steak.aim());
        assertEquals(
                new Limit.AtLeast(Quantity.of("0.75", Unit.INCH)),
                steak.acceptance().thickness());
        assertEquals(new Limit.NotStated(), steak.acceptance().weight());
    }

    @Test
    void chops_with_a_saw_cut_at_least_seven_from_a_side() {
        Portion chop = portion(
                "chop 25 mm thick, kerf 2 mm, length 18 cm ± 8 mm, at least 7 from a side," + " remainder -> mince");
        assertEquals(new Aim.Thickness(new Expected.Mean(mm("25"))), chop.aim());
        assertEquals(
                new Slicing(
                        new Measure.Stated(mm("2")),
                        new Slicing.Length.Stated(new Expected.PlusMinus(Quantity.of("18", Unit.CENTIMETRE), mm("8"))),
                        ""),
                chop.slicing());
        assertEquals(new Fewest.From(7, Fewest.Whole.SIDE), chop.acceptance().fewest());
    }

    @ParameterizedTest
    @CsvSource({"a piece, PIECE", "side, SIDE", "each side, SIDE", "A Carcass, CARCASS"})
    void portions_are_counted_from_what_there_is(String written, Fewest.Whole whole) {
        Portion chop = portion("chop 25 mm thick, at least 7 from " + written + ", remainder -> mince");
        assertEquals(new Fewest.From(7, whole), chop.acceptance().fewest());
    }

    @Test
    void joints_tied_four_times_with_twine_that_is_not_counted() {
        Portion joint = portion("joint, halved, between 650 and 850 g, tied 4 times, tare twine 5 g");
        assertEquals(
                new Portion(
                        TradeName.of("joint"),
                        new Aim.Number(2),
                        Acceptance.of(new Limit.Between(grams("650"), grams("850"))),
                        Slicing.NONE,
                        new Finish(
                                new Finish.Binding.Tied(4),
                                new Finish.Pack.NotStated(),
                                List.of(new Finish.Tare(TradeName.of("twine"), grams("5")))),
                        new Portion.EndPieces.NotStated(),
                        new Home.NotStated()),
                joint);
    }

    @ParameterizedTest
    @CsvSource({"whole, 1", "halved, 2", "into 3, 3"})
    void a_piece_is_left_whole_or_divided(String written, int number) {
        assertEquals(new Aim.Number(number), portion("joint, " + written).aim());
    }

    @ParameterizedTest
    @ValueSource(strings = {"packed two to a vacuum bag", "packed 2 to vacuum bag", "packed 2 to a Vacuum Bag"})
    void two_go_to_a_bag(String written) {
        assertEquals(
                new Finish.Pack.Together(2, TradeName.of("vacuum bag")),
                portion("joint, halved, " + written).finish().pack());
    }

    @Test
    void a_net_and_ties_by_their_spacing() {
        assertEquals(
                new Finish.Binding.Netted(mm("125")),
                portion("joint, whole, netted 125 mm").finish().binding());
        assertEquals(
                new Finish.Binding.TiedEvery(mm("30")),
                portion("joint, whole, tied every 30 mm").finish().binding());
    }

    @Test
    void end_pieces_and_the_smallest_that_counts() {
        Portion steak =
                portion("steak 180 g, across the grain, smallest 150 g, end pieces 60 g -> mince, remainder -> mince");
        assertEquals(new Measure.Stated(grams("150")), steak.acceptance().smallest());
        Home mince = new Home.ToStream(TradeName.of("mince"));
        assertEquals(new Portion.EndPieces.Weighed(new Expected.Mean(grams("60")), mince), steak.endPieces());
        assertEquals("across the grain", steak.slicing().direction());
        assertEquals(
                new Portion.EndPieces.Sent(mince),
                portion("steak 180 g, end pieces -> mince, remainder -> mince").endPieces());
    }
}
