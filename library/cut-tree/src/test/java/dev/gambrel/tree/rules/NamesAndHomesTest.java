package dev.gambrel.tree.rules;

import static dev.gambrel.tree.Sheet.bone;
import static dev.gambrel.tree.Sheet.cited;
import static dev.gambrel.tree.Sheet.cut;
import static dev.gambrel.tree.Sheet.name;
import static dev.gambrel.tree.Sheet.portioned;
import static dev.gambrel.tree.Sheet.rest;
import static dev.gambrel.tree.Sheet.sent;
import static dev.gambrel.tree.Sheet.share;
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
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.Sheep;
import dev.gambrel.tree.Sheet;
import dev.gambrel.tree.Source;
import dev.gambrel.tree.Stream;
import dev.gambrel.tree.TrimRule;
import dev.gambrel.tree.inspection.TreeCode;
import dev.gambrel.tree.portion.Limit;
import java.util.List;
import org.junit.jupiter.api.Test;

class NamesAndHomesTest {
    private static final Home NOWHERE = new Home.NotStated();

    @Test
    void the_parts_of_one_cut_have_different_names() {
        Diagnostic finding =
                only(Sheet.of(cut("leg", "40"), cut("loin", "20"), cut("LEG", "40")), TreeCode.DUPLICATE_PART);
        assertEquals("There are two lines for the LEG under the carcass.", finding.message());
        assertEquals("LEG, name 1", where(finding.place()));
        assertEquals("LEG, name", where(finding.related().get(0).place()));
    }

    @Test
    void each_line_of_a_name_after_the_first_is_told() {
        breaks(
                Sheet.of(cut("leg", "40"), cut("leg", "20"), cut("leg", "40")),
                TreeCode.DUPLICATE_PART,
                TreeCode.DUPLICATE_PART);
    }

    @Test
    void parts_of_different_cuts_may_share_a_name() {
        keepsTheRules(Sheet.of(cut("leg", "40", cut("eye", "100")), cut("loin", "60", cut("eye", "100"))));
    }

    @Test
    void whatever_is_sent_goes_to_a_stream_that_there_is() {
        Diagnostic finding = only(Sheet.of(cut("leg", "40"), rest("minse")), TreeCode.UNKNOWN_STREAM);
        assertEquals("There is no stream called minse.", finding.message());
        assertEquals("rest, stream", where(finding.place()));
        assertEquals(
                List.of(
                        "Did you mean “mince”?",
                        "Or declare it: stream minse, and after the comma saleable, by-product or waste."),
                finding.help());
    }

    @Test
    void where_no_stream_is_near_all_are_named() {
        Diagnostic finding = only(Sheet.of(sent(cut("leg", "100"), "render")), TreeCode.UNKNOWN_STREAM);
        assertEquals(List.of("Known: diced, mince, bones and waste."), finding.notes());
    }

    @Test
    void the_remainder_of_a_portion_goes_to_a_stream_that_there_is() {
        Portion lost = Portion.byWeight(
                name("steak"), new Expected.Mean(Quantity.of("180", Unit.GRAM)), new Limit.NotStated(), to("bin"));
        Diagnostic finding = only(Sheet.of(portioned(cut("loin", "100"), lost)), TreeCode.UNKNOWN_STREAM);
        assertEquals("loin / steak, stream", where(finding.place()));
    }

    @Test
    void a_stream_is_declared_once() {
        Stream again = new Stream(name("MINCE"), Stream.Kind.WASTE, new Stream.Lean.NotStated());
        Diagnostic finding = only(Sheet.of(rest("mince")).with(again), TreeCode.DUPLICATE_STREAM);
        assertEquals("The stream MINCE is declared twice.", finding.message());
        assertEquals("carcass, stream 4", where(finding.place()));
    }

    @Test
    void whatever_is_cited_is_declared() {
        Sheet house = Sheet.of(cited(cut("leg", "100"), "house tests"));
        keepsTheRules(house.citing("House Tests", Source.Kind.MEASURED));
        Diagnostic finding = only(house.citing("house test", Source.Kind.MEASURED), TreeCode.UNKNOWN_SOURCE);
        assertEquals("There is no source called house tests.", finding.message());
        assertEquals("leg, source", where(finding.place()));
        assertEquals("Did you mean “house test”?", finding.help().get(0));
    }

    @Test
    void each_source_of_a_figure_is_looked_up() {
        Sheet sheet = Sheet.of(cited(cut("leg", "100"), "house", "elsewhere")).citing("house", Source.Kind.MEASURED);
        assertEquals("leg, source 1", where(only(sheet, TreeCode.UNKNOWN_SOURCE).place()));
    }

    @Test
    void a_source_of_published_figures_is_declared_too() {
        Sheet sheet = Sheet.of(rest("mince"))
                .of(Sheep.species(Sheep.published("leg", Sheep.figure("32", "carcass", "IASRI"))));
        breaks(sheet, TreeCode.UNKNOWN_SOURCE);
        keepsTheRules(sheet.citing("IASRI", Source.Kind.PUBLISHED));
    }

    @Test
    void a_source_is_declared_once() {
        Diagnostic finding = only(
                Sheet.of(rest("mince")).citing("house", Source.Kind.MEASURED).citing("House", Source.Kind.MEMORY),
                TreeCode.DUPLICATE_SOURCE);
        assertEquals("carcass, source 1", where(finding.place()));
    }

    @Test
    void what_comes_off_goes_somewhere() {
        Part bone = new Part.Bone(name("femur"), List.of(name("femur")), share("7"), NOWHERE);
        Diagnostic finding = only(Sheet.of(cut("leg", "100", bone)), TreeCode.NO_HOME);
        assertEquals("Nothing says where the femur of the leg goes.", finding.message());
        breaks(
                Sheet.of(cut("leg", "100", new Part.Trim(name("fat"), new TrimRule.SquareOff(), share("4"), NOWHERE))),
                TreeCode.NO_HOME);
        breaks(Sheet.of(cut("leg", "40"), new Part.Rest(NOWHERE)), TreeCode.NO_HOME);
    }

    @Test
    void a_cut_is_sold_under_its_own_name_unless_it_is_sent() {
        keepsTheRules(Sheet.of(cut("leg", "50"), sent(cut("neck", "50"), "diced")));
    }

    @Test
    void what_is_left_after_the_last_portion_goes_somewhere() {
        Portion open = Portion.byWeight(
                name("steak"), new Expected.Mean(Quantity.of("180", Unit.GRAM)), new Limit.NotStated(), NOWHERE);
        Diagnostic finding =
                only(Sheet.of(portioned(cut("loin", "100", bone("chine", "7")), open)), TreeCode.REMAINDER_NO_HOME);
        assertEquals("After the last steak, what is left of the loin has nowhere to go.", finding.message());
        assertEquals("loin / steak, name", where(finding.place()));
    }
}
