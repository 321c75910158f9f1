package dev.gambrel.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;

import com.fasterxml.jackson.databind.ObjectMapper;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.json.located.Findings;
import dev.gambrel.json.located.Located;
import dev.gambrel.json.located.LocatedParser;
import dev.gambrel.json.trees.CutTrees;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.SourceText;
import dev.gambrel.tree.CutTree;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;

class NoInputThrowsLaws {
    private static final List<String> SPLINTERS = List.of(
            "{", "}", "[", "]", ",", ":", "\"", "\\", "null", "true", "-1", "1e9", "\"kg\"", "\"\"", "{}", "[]",
            "\ud83d");

    @Provide
    Arbitrary<String> written() {
        Arbitrary<String> any = CutTrees.any().map(TreeJsonWriter::write);
        return Arbitraries.oneOf(any, Arbitraries.of(Fixtures.marramHogget(), Fixtures.lamb()));
    }

    @Provide
    Arbitrary<String> splinters() {
        return Arbitraries.of(SPLINTERS);
    }

    @Provide
    Arbitrary<String> almostJson() {
        return Arbitraries.of(SPLINTERS).list().ofMaxSize(30).map(parts -> String.join("", parts));
    }

    /** A tree or an error, and every sentence and place can be shown. */
    private static void isAnswered(Result<CutTree> result) {
        assertEquals(result.value().isEmpty(), Result.hasError(result.diagnostics()));
        for (Diagnostic finding : result.diagnostics()) {
            assertFalse(finding.message().isBlank());
            if (finding.place() instanceof Place.Written written) {
                written.text().text().slice(written.text().span());
            } else if (finding.place() instanceof Place.InText in) {
                in.text().slice(in.span());
            }
        }
    }

    private static void reads(String text) {
        isAnswered(TreeJsonReader.readUnchecked(new SourceText("buyer.json", text), Limits.DEFAULT));
    }

    @Property(tries = 500)
    void any_text_is_answered(@ForAll @StringLength(max = 60) String text) {
        reads(text);
    }

    @Property(tries = 500)
    void almost_json_is_answered(@ForAll("almostJson") String text) {
        reads(text);
    }

    @Property(tries = 500)
    void any_bytes_are_answered(@ForAll byte[] bytes) {
        isAnswered(TreeJsonReader.read("buyer.json", bytes));
    }

    @Property(tries = 200, shrinking = ShrinkingMode.OFF)
    void a_file_cut_short_anywhere_is_answered_with_an_error(
            @ForAll("written") String json, @ForAll @IntRange(max = 1_000_000) int at) {
        String part = json.substring(0, at % (json.length() - 1));
        reads(part);
        assertFalse(TreeJsonReader.readUnchecked(new SourceText("buyer.json", part), Limits.DEFAULT)
                .diagnostics()
                .isEmpty());
    }

    @Property(tries = 300, shrinking = ShrinkingMode.OFF)
    void a_file_changed_anywhere_is_answered(
            @ForAll("written") String json,
            @ForAll @IntRange(max = 1_000_000) int at,
            @ForAll @IntRange(max = 6) int removed,
            @ForAll("splinters") String put) {
        int from = at % json.length();
        reads(json.substring(0, from) + put + json.substring(Math.min(json.length(), from + removed)));
    }

    @Provide
    Arbitrary<String> writtenByHand() {
        return Arbitraries.of(Fixtures.marramHogget(), Fixtures.lamb());
    }

    @Property(tries = 300)
    void a_sound_file_changed_anywhere_is_answered_by_the_rules_too(
            @ForAll("writtenByHand") String json,
            @ForAll @IntRange(max = 1_000_000) int at,
            @ForAll @IntRange(max = 6) int removed,
            @ForAll("splinters") String put) {
        int from = at % json.length();
        String changed = json.substring(0, from) + put + json.substring(Math.min(json.length(), from + removed));
        isAnswered(TreeJsonReader.read(new SourceText("buyer.json", changed), Limits.DEFAULT));
    }

    @Property(tries = 100, shrinking = ShrinkingMode.OFF)
    void every_value_knows_where_it_stands(@ForAll("written") String json) throws Exception {
        SourceText text = new SourceText("tree.json", json);
        check(LocatedParser.parse(text, new Findings(text), Limits.DEFAULT), text, new ObjectMapper());
    }

    @Example
    void a_value_longer_than_a_buffer_leaves_the_places_after_it_right() throws Exception {
        SourceText text = new SourceText(
                "tree.json",
                "{\"a\": [" + "1,".repeat(20_000) + "1], \"b\": 1." + "0".repeat(9_000) + ", \"c\": {\"d\": 1."
                        + "0".repeat(9_000) + "}}");
        check(LocatedParser.parse(text, new Findings(text), Limits.DEFAULT), text, new ObjectMapper());
    }

    private static void check(Located value, SourceText text, ObjectMapper mapper) throws Exception {
        String slice = text.slice(value.span());
        if (value instanceof Located.Text words) {
            assertEquals(words.text(), mapper.readValue(slice, String.class));
        } else if (value instanceof Located.Figure figure) {
            assertEquals(figure.digits(), slice);
        } else if (value instanceof Located.Items list) {
            assertEquals("[]", slice.substring(0, 1) + slice.substring(slice.length() - 1));
            for (Located item : list.items()) {
                check(item, text, mapper);
            }
        } else if (value instanceof Located.Fields object) {
            assertEquals("{}", slice.substring(0, 1) + slice.substring(slice.length() - 1));
            for (var field : object.fields().entrySet()) {
                String name = text.slice(field.getValue().name());
                assertEquals(field.getKey(), mapper.readValue(name, String.class));
                check(field.getValue().value(), text, mapper);
            }
        }
    }
}
