package dev.gambrel.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.Carcass;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.Specification;
import dev.gambrel.tree.WeightBand;
import dev.gambrel.tree.anatomy.Species;
import java.util.List;
import org.junit.jupiter.api.Test;

class TreeJsonWriterTest {
    private static final Species SHEEP = Species.unknown(TradeName.of("sheep"));

    private static CutTree tree(String title, WeightBand band, List<Part> parts, List<String> notes) {
        Carcass carcass = new Carcass(Basis.COLD, List.of(), band, List.of());
        return new CutTree(new Specification(title, 3), carcass, SHEEP, List.of(), List.of(), parts, notes);
    }

    private static String loss(String amount) {
        Expected expected = new Expected.Mean(Quantity.of(amount, Unit.PERCENT));
        Part drip = new Part.Loss(TradeName.of("drip"), new Share.Stated(expected));
        return TreeJsonWriter.write(tree("Marram hogget", new WeightBand.NotStated(), List.of(drip), List.of()));
    }

    private static String noted(String note) {
        return TreeJsonWriter.write(tree("Marram hogget", new WeightBand.NotStated(), List.of(), List.of(note)));
    }

    @Test
    void files_written_by_hand_are_what_the_writer_writes() {
        for (String json : List.of(Fixtures.lamb(), Fixtures.marramHogget(), Fixtures.everyKind())) {
            assertEquals(json, TreeJsonWriter.write(Fixtures.read(json).orElseThrow()));
        }
    }

    @Test
    void what_is_not_stated_is_left_out() {
        CutTree bare = tree("Marram hogget", new WeightBand.NotStated(), List.of(), List.of());
        assertEquals(Fixtures.SMALLEST, TreeJsonWriter.write(bare));
    }

    @Test
    void a_share_of_33_0_stays_33_0() {
        assertTrue(loss("33.0").contains("\"mean\": 33.0, "));
        assertTrue(loss("33").contains("\"mean\": 33, "));
    }

    @Test
    void a_small_share_is_written_without_an_exponent() {
        assertTrue(loss("0.00000001").contains("\"mean\": 0.00000001, "));
    }

    @Test
    void a_thousand_written_with_an_exponent_is_written_out_and_read_as_a_thousand() {
        String json = loss("1E+3");
        assertTrue(json.contains("\"mean\": 1000, "));
        assertEquals(json, TreeJsonWriter.write(Fixtures.read(json).orElseThrow()));
    }

    @Test
    void the_second_of_two_weights_names_its_unit_only_if_it_is_another() {
        WeightBand oneUnit = new WeightBand.Stated(Quantity.of("44", Unit.POUND), Quantity.of("53", Unit.POUND));
        WeightBand twoUnits = new WeightBand.Stated(Quantity.of("20", Unit.KILOGRAM), Quantity.of("53", Unit.POUND));
        assertTrue(TreeJsonWriter.write(tree("a", oneUnit, List.of(), List.of()))
                .contains("{\"low\": 44, \"high\": 53, \"unit\": \"lb\"}"));
        assertTrue(TreeJsonWriter.write(tree("a", twoUnits, List.of(), List.of()))
                .contains("{\"low\": 20, \"high\": 53, \"unit\": \"kg\", \"highUnit\": \"lb\"}"));
    }

    @Test
    void characters_that_hide_or_turn_text_are_escaped_and_others_are_not() {
        String json = noted("a\u202eb\u0007c\u2028d\u007fe\ud83df \"q\" \\ côte 羊 \ud83d\udc11");
        assertTrue(json.contains("a\\u202eb\\u0007c\\u2028d\\u007fe\\ud83df \\\"q\\\" \\\\ côte 羊 \ud83d\udc11"), json);
    }

    @Test
    void lines_end_in_a_line_feed_alone_and_so_does_the_file() {
        String json =
                TreeJsonWriter.write(Fixtures.read(Fixtures.marramHogget()).orElseThrow());
        assertFalse(json.contains("\r") || json.contains(" \n") || json.contains("\t"));
        assertTrue(json.endsWith("}\n"));
    }

    @Test
    void a_list_too_long_for_a_line_has_a_line_for_each_word() {
        String note = "x".repeat(60);
        CutTree tree = tree("a", new WeightBand.NotStated(), List.of(), List.of(note, note));
        String lines = "\"notes\": [\n    \"" + note + "\",\n    \"" + note + "\"\n  ]\n}";
        assertTrue(TreeJsonWriter.write(tree).contains(lines));
    }
}
