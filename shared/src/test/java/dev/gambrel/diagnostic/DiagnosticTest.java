package dev.gambrel.diagnostic;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.Span;
import dev.gambrel.text.TradeName;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class DiagnosticTest {
    private static final TreePath LEG = TreePath.ROOT.then(TradeName.of("leg"));
    private static final Place AT_LEG = new Place.InTree(LEG, Aspect.NAME);
    private static final Diagnostic SUM = Diagnostic.of(TestCode.SUM_NOT_100, AT_LEG);

    @Test
    void the_sentence_holds_the_values_found() {
        Diagnostic finding = SUM.with("cut", TradeName.of("leg")).with("sum", Quantity.of("100.70", Unit.PERCENT));
        assertEquals("The parts of the leg add up to 100.70 %.", finding.message());
    }

    @Test
    void a_sentence_without_values_stands_as_it_is() {
        assertEquals("Cut by hand.", Diagnostic.of(TestCode.BY_HAND, AT_LEG).message());
    }

    @Test
    void braces_in_a_value_are_printed_and_not_looked_up() {
        assertEquals(
                "The parts of the {sum} add up to {cut}.",
                SUM.with("cut", "{sum}").with("sum", "{cut}").message());
    }

    @Test
    void values_keep_their_kind_for_programs() {
        Diagnostic finding = SUM.with("cut", "leg")
                .with("sum", 3L)
                .with("more", Quantity.of("1", Unit.GRAM))
                .with("also", Integer.valueOf(7));
        assertEquals(new Argument.Text("cut", "leg"), finding.arguments().get(0));
        assertEquals(new Argument.Count("sum", 3), finding.arguments().get(1));
        assertEquals(
                new Argument.Measure("more", Quantity.of("1", Unit.GRAM)),
                finding.arguments().get(2));
        assertEquals("1 g", finding.arguments().get(2).shown());
        assertEquals("3", finding.arguments().get(1).shown());
    }

    @Test
    void a_sentence_that_lacks_a_value_is_a_fault_of_the_program() {
        Diagnostic finding = SUM.with("cut", "leg");
        var fault = assertThrows(IllegalStateException.class, finding::message);
        assertEquals("T0000 lacks its argument sum", fault.getMessage());
    }

    @Test
    void each_addition_leaves_the_earlier_finding_as_it_was() {
        Diagnostic fuller = SUM.note("one").help("two").related(AT_LEG, "three");
        assertTrue(
                SUM.notes().isEmpty() && SUM.help().isEmpty() && SUM.related().isEmpty());
        assertEquals(List.of("one"), fuller.notes());
        assertEquals(List.of("two"), fuller.help());
        assertEquals(List.of(new Label(AT_LEG, "three")), fuller.related());
    }

    @Test
    void additions_keep_their_order() {
        SourceText text = new SourceText("hogget.cuts", "cut leg 33");
        Fix first = new Fix(new Place.InText(text, new Span(8, 10)), "33 %", false);
        Fix second = new Fix(new Place.InText(text, new Span(8, 10)), "33 kg", false);
        Diagnostic finding =
                SUM.help("a").help("b").note("c").note("d").fix(first).fix(second);
        assertEquals(List.of("a", "b"), finding.help());
        assertEquals(List.of("c", "d"), finding.notes());
        assertEquals(List.of(first, second), finding.fixes());
    }

    @Test
    void lists_that_are_handed_in_are_copied() {
        List<String> notes = new ArrayList<>(List.of("one"));
        Diagnostic finding =
                new Diagnostic(TestCode.BY_HAND, List.of(), AT_LEG, List.of(), notes, List.of(), List.of());
        notes.add("two");
        assertEquals(List.of("one"), finding.notes());
        assertThrows(UnsupportedOperationException.class, () -> finding.notes().add("three"));
    }

    @Test
    void every_place_can_be_told_in_another_way() {
        Place moved = new Place.InFile("hogget.cuts");
        Diagnostic finding = SUM.related(AT_LEG, "here").note("kept").at(place -> moved);
        assertEquals(moved, finding.place());
        assertEquals(List.of(new Label(moved, "here")), finding.related());
        assertEquals(List.of("kept"), finding.notes());
    }

    @Test
    void a_finding_matters_as_much_as_its_kind() {
        assertEquals(Severity.ERROR, SUM.severity());
        assertEquals(
                List.of("error", "warning", "note"),
                List.of(Severity.ERROR.word(), Severity.WARNING.word(), Severity.NOTE.word()));
    }
}
