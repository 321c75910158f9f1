package dev.gambrel.yields.conformance.number;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Severity;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.anatomy.Reference;
import dev.gambrel.tree.anatomy.Species;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.tree.portion.Outside;
import dev.gambrel.yields.conformance.clause.Clause;
import dev.gambrel.yields.conformance.clause.Quality;
import dev.gambrel.yields.conformance.clause.Stated;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;

/** Published numbers beside words. Figures: UNECE Standard Bovine Meat 2007, as transcribed; IMPS 100, as reprinted. */
class NumberCheckTest {
    private static final Species CATTLE = Species.unknown(TradeName.of("cattle"));
    private static final Species SHEEP = Species.unknown(TradeName.of("sheep"));
    private static final Place.InTree NUMBER = new Place.InTree(TreePath.ROOT, Aspect.REFERENCE);
    private static final Place.InTree WORDS = new Place.InTree(TreePath.ROOT, Aspect.BONE_STATE);

    /** The transcription's own test value: brisket, bone-in, chilled, 3 mm of fat, vacuum packed. */
    private static final String BRISKET = "10164300153201040050";

    private static Stated number(String scheme, String number, String edition, String range, Reference.Rules rules) {
        var reference = new Reference(TradeName.of(scheme), number, edition, "", range, rules, List.of());
        return new Stated(new Clause.Numbered(reference), NUMBER);
    }

    private static Stated unece(String number) {
        return number("UNECE", number, "2007", "", Reference.Rules.NOT_STATED);
    }

    private static Stated state(Quality quality, String state) {
        return new Stated(new Clause.State(quality, state), WORDS);
    }

    private static Stated limited(Quality quality, Limit limit) {
        return new Stated(new Clause.Limited(quality, limit, new Outside.None(), Clause.How.NOT_SAID), WORDS);
    }

    @Test
    void the_number_of_a_brisket_on_the_bone_contradicts_boneless() {
        List<Diagnostic> found =
                NumberCheck.ofBuyer(CATTLE, List.of(unece("1643"), state(Quality.BONE_STATE, "boneless")));
        assertEquals(1, found.size());
        assertEquals(NumberCode.NUMBER_AGAINST_WORDS, found.get(0).code());
        assertEquals(NUMBER, found.get(0).place());
        assertEquals(WORDS, found.get(0).related().get(0).place());
        assertEquals(
                "UNECE 1643 edition 2007 means bone in, and the words beside it say boneless.",
                found.get(0).message());
    }

    @Test
    void what_agrees_is_not_told() {
        assertTrue(NumberCheck.ofBuyer(CATTLE, List.of(unece("1643"), state(Quality.BONE_STATE, "bone in")))
                .isEmpty());
    }

    @Test
    void where_the_words_rule_the_contradiction_is_a_note() {
        Stated rules = number("UNECE", "1643", "2007", "", Reference.Rules.WORDS);
        List<Diagnostic> found = NumberCheck.ofBuyer(CATTLE, List.of(rules, state(Quality.BONE_STATE, "boneless")));
        assertEquals(NumberCode.NUMBER_GIVES_WAY, found.get(0).code());
        assertEquals(Severity.NOTE, found.get(0).severity());
    }

    @Test
    void a_code_of_beef_does_not_go_with_sheep() {
        List<Diagnostic> found = NumberCheck.ofBuyer(SHEEP, List.of(unece(BRISKET)));
        assertEquals(NumberCode.NUMBER_AGAINST_WORDS, found.get(0).code());
    }

    @Test
    void a_code_says_more_than_the_cut() {
        assertEquals(
                1,
                NumberCheck.ofBuyer(CATTLE, List.of(unece(BRISKET), state(Quality.REFRIGERATION, "frozen")))
                        .size());
        Limit fiveMillimetres = new Limit.AtMost(Quantity.of("5", Unit.MILLIMETRE));
        List<Diagnostic> looser = NumberCheck.ofBuyer(
                CATTLE, List.of(unece(BRISKET), limited(Quality.FAT_AT_ANY_POINT, fiveMillimetres)));
        assertEquals(
                NumberCode.NUMBER_PERHAPS_AGAINST_WORDS,
                looser.get(0).code(),
                "that it is a limit at any point is from memory");
    }

    @Test
    void a_house_that_contradicts_itself_is_told_where_it_was_asked_with_both_places() {
        Place.InTree asked = new Place.InTree(TreePath.ROOT.then(TradeName.of("brisket")), Aspect.NAME);
        List<Diagnostic> found =
                NumberCheck.ofHouse(CATTLE, List.of(unece("1643"), state(Quality.BONE_STATE, "boneless")), asked);
        assertEquals(NumberCode.HOUSE_NUMBER_AGAINST_WORDS, found.get(0).code());
        assertEquals(asked, found.get(0).place());
        assertEquals(
                List.of(WORDS, NUMBER),
                found.get(0).related().stream().map(label -> label.place()).toList());
    }

    @Test
    void what_only_has_the_length_of_a_code_is_told() {
        List<Diagnostic> found = NumberCheck.ofBuyer(CATTLE, List.of(unece("44932211340000145100")));
        assertEquals(NumberCode.NO_MEAT_CODE, found.get(0).code());
    }

    @Test
    void a_number_that_is_not_held_contradicts_nothing() {
        assertTrue(NumberCheck.ofBuyer(CATTLE, List.of(unece("9999"), state(Quality.BONE_STATE, "boneless")))
                .isEmpty());
        Stated another = number("house book", "1643", "", "", Reference.Rules.NOT_STATED);
        assertTrue(NumberCheck.ofBuyer(CATTLE, List.of(another, state(Quality.BONE_STATE, "boneless")))
                .isEmpty());
    }

    @Test
    void a_range_of_the_scheme_is_a_limit_on_weight() {
        // IMPS 103, rib, primal: range B 28 to 33 lb (1997 buyers guide with the same numbers).
        Stated rib = number("IMPS", "103", "", "B", Reference.Rules.NOT_STATED);
        Optional<Stated> limit = WeightRanges.limit(rib);
        assertTrue(limit.isPresent());
        assertEquals("28 lb to 33 lb", limit.get().clause().words());
        assertEquals(NUMBER, limit.get().at());
        assertTrue(WeightRanges.unknown(rib).isEmpty());
    }

    /** IMPS 112A, range B 7 to 9 lb: from memory. */
    @Test
    void a_range_that_is_only_remembered_is_held_against_nobody() {
        assertTrue(WeightRanges.limit(number("IMPS", "112A", "", "B", Reference.Rules.NOT_STATED))
                .isEmpty());
    }

    @Test
    void a_range_that_is_not_held_is_told() {
        Stated unknown = number("IMPS", "103", "", "Z", Reference.Rules.NOT_STATED);
        assertEquals(
                NumberCode.RANGE_NOT_HELD,
                WeightRanges.unknown(unknown).orElseThrow().code());
    }
}
