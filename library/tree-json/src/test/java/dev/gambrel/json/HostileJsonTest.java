package dev.gambrel.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.diagnostic.Argument;
import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.json.located.JsonCode;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.SourceText;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

class HostileJsonTest {
    private static Limits limits(int textBytes, int nesting, int nodes) {
        return new Limits(textBytes, nesting, 1, 1, 1, nodes, 1);
    }

    private static final Limits WIDE = limits(1 << 22, 100, 50_000);

    private static List<Code> codes(String json, Limits limits) {
        return TreeJsonReader.read(new SourceText("buyer.json", json), limits).diagnostics().stream()
                .map(Diagnostic::code)
                .toList();
    }

    private static List<Code> codes(byte[] bytes) {
        return TreeJsonReader.read("buyer.json", bytes).diagnostics().stream()
                .map(Diagnostic::code)
                .toList();
    }

    private static String nested(int depth) {
        return "[".repeat(depth) + "]".repeat(depth);
    }

    private static String losses(int count) {
        String loss = "{\"kind\": \"loss\", \"name\": \"drip\"}";
        return Fixtures.smallestWith("\"parts\": [" + (loss + ",").repeat(count - 1) + loss + "]");
    }

    @Test
    void a_file_at_its_longest_is_read_and_one_byte_more_is_not() {
        String json = Fixtures.SMALLEST.replace("Marram hogget", "Schöpsenbraten");
        int bytes = json.getBytes(StandardCharsets.UTF_8).length;
        assertEquals(List.of(), codes(json, limits(bytes, 100, 100)));
        assertEquals(List.of(JsonCode.FILE_TOO_LONG), codes(json, limits(bytes - 1, 100, 100)));
    }

    @Test
    void a_file_too_long_is_refused_as_a_whole() {
        byte[] bytes = new byte[(1 << 20) + 1];
        Diagnostic found =
                TreeJsonReader.read("buyer.json", bytes).diagnostics().get(0);
        assertEquals(JsonCode.FILE_TOO_LONG, found.code());
        assertEquals(new Place.InFile("buyer.json"), found.place());
    }

    @Test
    void two_brackets_for_each_of_a_hundred_cuts_and_ten_around_are_read_and_one_more_is_not() {
        assertEquals(List.of(JsonCode.WRONG_TYPE), codes(nested(210), WIDE));
        assertEquals(List.of(JsonCode.NESTED_TOO_DEEP), codes(nested(211), WIDE));
        assertEquals(List.of(JsonCode.NESTED_TOO_DEEP), codes(nested(100_000), WIDE));
    }

    @Test
    void no_limit_lets_brackets_past_two_hundred_and_fifty() {
        Limits loose = limits(1 << 20, 1 << 20, 50_000);
        assertEquals(List.of(JsonCode.WRONG_TYPE), codes(nested(250), loose));
        assertEquals(List.of(JsonCode.NESTED_TOO_DEEP), codes(nested(251), loose));
    }

    /** A cut within a cut takes two brackets; the file and the innermost cut's list of parts take the rest. */
    @Test
    void cuts_within_cuts_as_deep_as_brackets_may_stand_are_read_and_written_on_a_small_stack() throws Exception {
        String cut = "{\"kind\": \"cut\", \"name\": \"leg\"";
        String json = Fixtures.smallestWith(
                "\"parts\": [" + (cut + ", \"parts\": [").repeat(123) + cut + "}" + "]}".repeat(123) + "]");
        SourceText text = new SourceText("buyer.json", json);
        List<String> written = new ArrayList<>();
        Runnable roundTrip = () -> written.add(TreeJsonWriter.write(
                TreeJsonReader.readUnchecked(text, limits(1 << 20, 250, 1_000)).orElseThrow()));
        Thread small = new Thread(null, roundTrip, "small stack", 512 << 10);
        small.start();
        small.join();
        assertEquals(1, written.size());
    }

    @Test
    void parts_at_their_most_are_read_and_one_more_is_not() {
        assertTrue(TreeJsonReader.readUnchecked(new SourceText("a", losses(20)), limits(1 << 20, 100, 20))
                .value()
                .isPresent());
        assertEquals(List.of(JsonCode.TOO_MANY_PARTS), codes(losses(21), limits(1 << 20, 100, 20)));
    }

    @Test
    void values_without_end_are_refused() {
        assertEquals(List.of(JsonCode.PAST_LIMIT), codes("[" + "1,".repeat(2_000) + "1]", limits(1 << 20, 100, 10)));
    }

    @Test
    void a_field_name_or_a_number_without_end_is_refused() {
        assertEquals(List.of(JsonCode.PAST_LIMIT), codes("{\"" + "x".repeat(129) + "\": 1}", WIDE));
        assertEquals(List.of(JsonCode.PAST_LIMIT), codes("[" + "1".repeat(20_000) + "]", WIDE));
    }

    @Test
    void ten_thousand_faults_are_not_all_listed() {
        List<Code> codes = codes(Fixtures.smallestWith("\"notes\": [" + "1,".repeat(9_999) + "1]"), WIDE);
        assertEquals(1_001, codes.size());
        assertEquals(JsonCode.TOO_MANY_FINDINGS, codes.get(1_000));
    }

    @Test
    void field_names_made_to_collide_are_read() {
        StringBuilder json = new StringBuilder("{");
        for (int i = 0; i < 4_096; i++) {
            StringBuilder name = new StringBuilder();
            for (int bit = 0; bit < 12; bit++) {
                name.append((i >> bit & 1) == 0 ? "Aa" : "BB"); // equal hash codes in Java
            }
            json.append('"').append(name).append("\": 1,");
        }
        List<Code> codes = codes(json.append("\"version\": 1}").toString(), WIDE);
        assertEquals(List.of(JsonCode.MISSING_FIELD), codes);
    }

    @Test
    void a_file_cut_short_is_told_where_it_ends() {
        String json = Fixtures.SMALLEST.substring(0, Fixtures.SMALLEST.indexOf("hogget"));
        Diagnostic found = TreeJsonReader.read(new SourceText("a", json), WIDE)
                .diagnostics()
                .get(0);
        assertEquals(JsonCode.NOT_JSON, found.code());
        assertTrue(found.arguments().contains(new Argument.Text("at", "/specification/title")));
    }

    @Test
    void what_is_not_json_is_told() {
        for (String text :
                List.of("", " ", "{", "}", "{]", "[1 2]", "NaN", "{'a': 1}", "{} {}", "{} x", "// no", "01")) {
            assertEquals(List.of(JsonCode.NOT_JSON), codes(text, WIDE), text);
        }
    }

    @Test
    void bytes_that_are_no_text_are_told() {
        assertEquals(List.of(JsonCode.NOT_UTF8), codes(new byte[] {'"', (byte) 0xff, '"'}));
        assertEquals(List.of(JsonCode.NOT_UTF8), codes(new byte[] {'"', (byte) 0xc3}));
        assertEquals(List.of(JsonCode.NOT_UTF8), codes(new byte[] {(byte) 0xed, (byte) 0xa0, (byte) 0x80}));
    }

    @Test
    void a_byte_order_mark_is_passed_over() {
        assertEquals(List.of(), codes(("\ufeff" + Fixtures.SMALLEST).getBytes(StandardCharsets.UTF_8)));
    }
}
