package dev.gambrel.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.diagnostic.Argument;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.json.Fixtures.Found;
import dev.gambrel.json.located.JsonCode;
import dev.gambrel.json.located.Located;
import dev.gambrel.tree.CutTree;
import java.nio.charset.StandardCharsets;
import java.util.List;
import org.junit.jupiter.api.Test;

class TreeJsonReaderTest {
    private static void finds(JsonCode code, String at, String underlined, String json) {
        List<Diagnostic> found = Fixtures.read(json).diagnostics();
        assertEquals(
                1, found.size(), () -> found.stream().map(Found::of).toList().toString());
        assertEquals(new Found(code, underlined, found.get(0).message()), Found.of(found.get(0)));
        assertTrue(
                found.get(0).arguments().contains(new Argument.Text("at", at)),
                found.get(0).message());
    }

    private static String smallest(String from, String to) {
        assertTrue(Fixtures.SMALLEST.contains(from));
        return Fixtures.SMALLEST.replace(from, to);
    }

    private static String hogget(String from, String to) {
        assertTrue(Fixtures.marramHogget().contains(from));
        return Fixtures.marramHogget().replace(from, to);
    }

    @Test
    void another_kind_of_file_is_told_and_nothing_else_in_it_is_judged() {
        finds(
                JsonCode.WRONG_FORMAT,
                "/format",
                "\"price list\"",
                "{\"format\": \"price list\", \"version\": 1, \"prices\": []}");
    }

    @Test
    void a_version_that_is_not_known_is_told_and_nothing_else_in_the_file_is_judged() {
        finds(JsonCode.UNKNOWN_VERSION, "/version", "2", smallest("1,\n", "2,\n  \"cuts\": [],\n"));
    }

    @Test
    void a_version_must_be_a_number() {
        finds(JsonCode.WRONG_TYPE, "/version", "\"1\"", smallest(": 1,", ": \"1\","));
    }

    @Test
    void a_missing_field_is_told_at_the_brace_of_what_lacks_it() {
        finds(JsonCode.MISSING_FIELD, "/species", "{", smallest(",\n  \"species\": {\"name\": \"sheep\"}", ""));
        finds(JsonCode.MISSING_FIELD, "/species/name", "{", smallest("\"name\": \"sheep\"", ""));
    }

    @Test
    void an_unknown_field_is_told_with_the_nearest_known_one() {
        String json = smallest("\"basis\": \"cold\"", "\"basis\": \"cold\", \"dresing\": []");
        finds(JsonCode.UNKNOWN_FIELD, "/carcass", "\"dresing\"", json);
        assertEquals(
                List.of("Was \"dressing\" meant?"),
                Fixtures.read(json).diagnostics().get(0).help());
    }

    @Test
    void a_needed_field_that_is_misspelt_is_told_once() {
        finds(JsonCode.UNKNOWN_FIELD, "/specification", "\"revison\"", smallest("\"revision\"", "\"revison\""));
        finds(JsonCode.UNKNOWN_FIELD, "/parts/0/share", "\"maen\"", hogget("\"mean\": 33.0", "\"maen\": 33.0"));
    }

    @Test
    void an_unknown_field_like_no_other_is_told_with_all_that_are_known() {
        assertEquals(
                List.of(
                        "Known here: \"title\", \"revision\", \"replaces\", \"inForceFrom\", \"because\", \"allowances\", \"side\", \"terms\"."),
                Fixtures.read(smallest("\"revision\": 3", "\"revision\": 3, \"butcher\": 1"))
                        .diagnostics()
                        .get(0)
                        .help());
    }

    @Test
    void a_value_of_the_wrong_type_is_underlined() {
        finds(JsonCode.WRONG_TYPE, "/specification/title", "7", smallest("\"Marram hogget\"", "7"));
        finds(JsonCode.WRONG_TYPE, "/specification/revision", "3.5", smallest("3}", "3.5}"));
        finds(JsonCode.WRONG_TYPE, "/specification/revision", "-3", smallest("3}", "-3}"));
        finds(JsonCode.WRONG_TYPE, "/species", "[]", smallest("{\"name\": \"sheep\"}", "[]"));
        finds(JsonCode.WRONG_TYPE, "/parts", "{}", Fixtures.smallestWith("\"parts\": {}"));
        finds(JsonCode.WRONG_TYPE, "/parts/0", "\"leg\"", Fixtures.smallestWith("\"parts\": [\"leg\"]"));
        finds(JsonCode.WRONG_TYPE, "/parts/0/pieces", "3", hogget("2,\n      \"share\"", "3,\n      \"share\""));
        finds(JsonCode.WRONG_TYPE, "the top of the file", "[1, 2]", "[1, 2]");
    }

    @Test
    void an_empty_value_is_told_to_be_left_out() {
        String json = smallest("\"Marram hogget\"", "null");
        finds(JsonCode.WRONG_TYPE, "/specification/title", "null", json);
        assertEquals(
                List.of("Leave out what is not stated."),
                Fixtures.read(json).diagnostics().get(0).help());
    }

    @Test
    void a_kind_that_is_not_known_is_told_once_whatever_else_stands_beside_it() {
        String json = Fixtures.smallestWith("\"parts\": [{\"kind\": \"bome\", \"weight\": 3}]");
        finds(JsonCode.UNKNOWN_WORD, "/parts/0/kind", "\"bome\"", json);
        assertEquals(
                List.of("Was \"bone\" meant?"),
                Fixtures.read(json).diagnostics().get(0).help());
    }

    @Test
    void a_word_that_does_not_fit_is_told() {
        finds(JsonCode.UNKNOWN_WORD, "/carcass/basis", "\"frozen\"", smallest("\"cold\"", "\"frozen\""));
        finds(JsonCode.UNKNOWN_WORD, "/streams/2/kind", "\"wste\"", hogget("\"waste\"", "\"wste\""));
    }

    @Test
    void a_unit_that_is_not_known_is_told_with_the_one_to_write() {
        String json = hogget("\"high\": 24, \"unit\": \"kg\"", "\"high\": 24, \"unit\": \"kilos\"");
        finds(JsonCode.UNKNOWN_UNIT, "/carcass/band/unit", "\"kilos\"", json);
        assertEquals(
                List.of("Write \"kg\"."),
                Fixtures.read(json).diagnostics().get(0).help());
    }

    @Test
    void a_share_in_kilograms_is_told_once() {
        finds(
                JsonCode.WRONG_DIMENSION,
                "/parts/0/share/unit",
                "\"kg\"",
                hogget("\"sd\": 0.9, \"unit\": \"%\"", "\"sd\": 0.9, \"unit\": \"kg\""));
    }

    @Test
    void a_fat_cover_in_grams_is_told() {
        finds(JsonCode.WRONG_DIMENSION, "/parts/0/parts/1/rule/limits/0/unit", "\"g\"", hogget("\"mm\"", "\"g\""));
    }

    @Test
    void a_name_with_a_slash_or_a_direction_character_is_told() {
        finds(JsonCode.UNUSABLE_NAME, "/species/name", "\"ram/ewe\"", smallest("\"sheep\"", "\"ram/ewe\""));
        finds(JsonCode.UNUSABLE_NAME, "/species/name", "\"\\u202esheep\"", smallest("\"sheep\"", "\"\\u202esheep\""));
    }

    @Test
    void a_name_of_129_characters_is_told_and_one_of_128_is_taken() {
        String longest = "x".repeat(128);
        assertTrue(Fixtures.read(smallest("sheep", longest)).value().isPresent());
        finds(JsonCode.UNUSABLE_NAME, "/species/name", "\"" + longest + "x\"", smallest("sheep", longest + "x"));
    }

    @Test
    void a_number_of_35_digits_is_told_and_one_of_34_is_taken() {
        String longest = "1234567890123456789012345678901234";
        assertTrue(Fixtures.read(hogget("33.0", longest)).value().isPresent());
        finds(JsonCode.UNUSABLE_NUMBER, "/parts/0/share/mean", longest + "5", hogget("33.0", longest + "5"));
    }

    @Test
    void a_number_with_an_exponent_past_all_sense_is_told() {
        for (String number : List.of("1e99999999999", "1e-99999999999", "1e2147483647", "1e34", "1e-10000")) {
            finds(JsonCode.UNUSABLE_NUMBER, "/parts/0/share/mean", number, hogget("33.0", number));
        }
    }

    @Test
    void a_field_given_twice_is_told_with_both_places() {
        String json = smallest("\"revision\": 3", "\"revision\": 3, \"revision\": 4");
        finds(JsonCode.DUPLICATE_FIELD, "/specification/revision", "\"revision\"", json);
        Diagnostic twice = Fixtures.read(json).diagnostics().get(0);
        Place.InText second = (Place.InText) twice.place();
        Place.InText first = (Place.InText) twice.related().get(0).place();
        assertEquals(json.indexOf("\"revision\""), first.span().start());
        assertEquals(json.lastIndexOf("\"revision\""), second.span().start());
    }

    @Test
    void every_fault_of_a_file_is_found_in_one_run_in_the_order_of_the_text() {
        String json = smallest("\"cold\"", "\"frozen\"")
                .replace("\"Marram hogget\"", "7")
                .replace("\"sheep\"", "\"sheep\", \"legs\": 4");
        assertEquals(
                List.of(JsonCode.WRONG_TYPE, JsonCode.UNKNOWN_WORD, JsonCode.UNKNOWN_FIELD),
                Fixtures.read(json).diagnostics().stream().map(Diagnostic::code).toList());
    }

    @Test
    void what_the_rules_of_the_tree_find_is_underlined_in_the_file() {
        String json = Fixtures.lamb().replace("\"mean\": 53,", "\"mean\": 35,");
        Result<CutTree> read = TreeJsonReader.read("lamb.json", json.getBytes(StandardCharsets.UTF_8));
        assertTrue(read.value().isEmpty());
        assertTrue(read.diagnostics().stream().noneMatch(finding -> finding.code() instanceof JsonCode));
        for (Diagnostic finding : read.diagnostics()) {
            Place.InText written = ((Place.Written) finding.place()).text();
            assertTrue(json.contains(written.text().slice(written.span())));
        }
    }

    @Test
    void a_slash_in_a_field_name_is_escaped_in_its_pointer() {
        Located.Pointer pointer = new Located.Pointer.Root().then("a/b~").then(0);
        assertEquals("/a~1b~0/0", pointer.toString()); // RFC 6901, section 3
    }
}
