package dev.gambrel.tree.rules;

import static dev.gambrel.tree.Sheet.cut;
import static dev.gambrel.tree.Sheet.name;
import static dev.gambrel.tree.Sheet.portioned;
import static dev.gambrel.tree.Sheet.rest;
import static dev.gambrel.tree.Sheet.to;
import static dev.gambrel.tree.Sheet.trim;
import static dev.gambrel.tree.rules.Held.keepsTheRules;
import static dev.gambrel.tree.rules.Held.only;
import static dev.gambrel.tree.rules.Held.where;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.Carcass;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.Sheet;
import dev.gambrel.tree.WeightBand;
import dev.gambrel.tree.inspection.BenchCode;
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

/** Of a carcass of 20 kg to 24 kg; the fillets are 1.0 % of it, so that the heaviest of two weighs 120 g. */
class PortionsFromPieceTest {
    private static final Acceptance WEIGHT_RULES = new Acceptance(
            new Limit.NotStated(),
            new Limit.NotStated(),
            Precedence.WEIGHT,
            new Measure.NotStated(),
            new Fewest.NotStated());

    private static Quantity grams(String amount) {
        return Quantity.of(amount, Unit.GRAM);
    }

    private static Expected mm(String amount) {
        return new Expected.Mean(Quantity.of(amount, Unit.MILLIMETRE));
    }

    private static Sheet steaks(String grams, Acceptance accepted, Cut of) {
        Aim aim = new Aim.Weight(new Expected.Mean(grams(grams)));
        return steaks(aim, accepted, Slicing.NONE, of);
    }

    private static Sheet steaks(Aim aim, Acceptance accepted, Slicing slicing, Cut of) {
        Portion portion = new Portion(
                name("steak"), aim, accepted, slicing, Finish.NONE, new Portion.EndPieces.NotStated(), to("diced"));
        return Sheet.of(portioned(of, portion), rest("mince"));
    }

    /** 24 kg × 1.0 % / 2 = 120 g. */
    @Test
    void a_fillet_gives_no_steak_that_is_heavier_than_it() {
        keepsTheRules(steaks("120", Acceptance.NONE, cut("fillet", "1.0")));
        Diagnostic found = only(steaks("121", Acceptance.NONE, cut("fillet", "1.0")), BenchCode.NO_PORTION_FROM_PIECE);
        assertEquals(
                "No fillet gives a steak of 121 g: even of a carcass of 24 kg one piece, trimmed, weighs 120 g.",
                found.message());
        assertEquals("fillet / steak, share", where(found.place()));
        assertEquals("fillet, share", where(found.related().get(0).place()));
    }

    /** 120 g × (1 + 3 × 10 %) = 156 g. */
    @Test
    void a_fillet_that_strays_may_be_heavy_enough() {
        keepsTheRules(steaks("155", Acceptance.NONE, cut("fillet", "1.0 ± 0.1")));
        only(steaks("157", Acceptance.NONE, cut("fillet", "1.0 ± 0.1")), BenchCode.NO_PORTION_FROM_PIECE);
    }

    /** 120 g × 90 % = 108 g. */
    @Test
    void what_is_trimmed_off_is_in_no_steak() {
        keepsTheRules(steaks("107", Acceptance.NONE, cut("fillet", "1.0", trim("fat", "10"))));
        only(steaks("109", Acceptance.NONE, cut("fillet", "1.0", trim("fat", "10"))), BenchCode.NO_PORTION_FROM_PIECE);
    }

    @Test
    void a_smaller_last_one_is_a_portion_as_well() {
        Acceptance smaller = new Acceptance(
                new Limit.NotStated(),
                new Limit.NotStated(),
                Precedence.NOT_STATED,
                new Measure.Stated(grams("110")),
                new Fewest.NotStated());
        keepsTheRules(steaks("150", smaller, cut("fillet", "1.0")));
    }

    @Test
    void without_a_band_nothing_is_concluded() {
        Carcass open = new Carcass(Basis.COLD, List.of(), new WeightBand.NotStated(), List.of());
        keepsTheRules(steaks("900", Acceptance.NONE, cut("fillet", "1.0")).with(open));
    }

    private static Sheet slices(String grams, String thick, String length) {
        Aim both = new Aim.WeightAndThickness(new Expected.Mean(grams(grams)), mm(thick));
        Slicing slicing = new Slicing(new Measure.NotStated(), new Slicing.Length.Stated(mm(length)), "");
        return steaks(both, WEIGHT_RULES, slicing, cut("loin eye", "10"));
    }

    /**
     * 1.0 kg to 1.2 kg over 400 mm are 23.8 to 28.6 cm² at 1.05 g to a cubic centimetre: 60 g of it are 20.0 to 24.0 mm
     * thick. A quarter more or less is let pass.
     */
    @Test
    void weight_and_thickness_are_kept_by_a_muscle_of_their_size() {
        keepsTheRules(slices("60", "22", "400"));
        keepsTheRules(slices("60", "29", "400"));
        keepsTheRules(slices("60", "17", "400"));
        only(slices("60", "31", "400"), BenchCode.MUSCLE_DOES_NOT_FIT);
        Diagnostic thin = only(slices("60", "15", "400"), BenchCode.MUSCLE_DOES_NOT_FIT);
        assertEquals(
                "The steak keeps its weight and its thickness in a muscle of 38 cm² across, but the loin eye has 24 to 29 cm².",
                thin.message());
        assertEquals("loin eye / steak, thickness", where(thin.place()));
        assertEquals(
                List.of("loin eye / steak, share", "loin eye / steak, length"),
                thin.related().stream().map(label -> where(label.place())).toList());
        assertEquals(
                List.of(
                        "60 g of this muscle is a slice of 20.0 mm to 24 mm: write one of the two figures anew, or the length."),
                thin.help());
    }
}
