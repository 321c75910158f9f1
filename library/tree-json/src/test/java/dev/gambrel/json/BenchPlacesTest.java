package dev.gambrel.json;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.json.located.Findings;
import dev.gambrel.json.located.LocatedParser;
import dev.gambrel.json.located.Refused;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.TradeName;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What a rule says of portions and of the bench is underlined where a file of JSON has it, and the rules are the same. */
class BenchPlacesTest {
    private final SourceText text = new SourceText("every-kind.json", Fixtures.everyKind());

    private String underlined(Aspect aspect, int index, String... path) throws Refused {
        TreePath names = new TreePath(List.of(path).stream().map(TradeName::of).toList());
        PartPlaces places = new PartPlaces(text, LocatedParser.parse(text, new Findings(text), Limits.DEFAULT));
        Place.Written written = (Place.Written) places.written(new Place.InTree(names, aspect, index));
        return text.slice(written.text().span()).replaceAll("\\s+", " ");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            quoteCharacter = '\'',
            value = {
                "THICKNESS       | {\"mean\": 22, \"sd\": 1, \"unit\": \"mm\"}",
                "THICKNESS_LIMIT | {\"low\": 18, \"high\": 1, \"unit\": \"mm\", \"highUnit\": \"in\"}",
                "LIMIT           | {\"atLeast\": 160, \"unit\": \"g\"}",
                "PRECEDENCE      | \"weight\"",
                "SMALLEST        | {\"amount\": 150, \"unit\": \"g\"}",
                "FEWEST          | {\"number\": 7, \"from\": \"side\"}",
                "KERF            | {\"amount\": 2, \"unit\": \"mm\"}",
                "LENGTH          | {\"low\": 17, \"high\": 20, \"unit\": \"cm\"}",
                "PACK            | {\"number\": 2, \"container\": \"vacuum bag\"}",
                "TARE            | {\"amount\": 12, \"unit\": \"g\", \"of\": \"bag\"}"
            })
    void a_portion_is_underlined_where_it_says_so(Aspect aspect, String expected) throws Refused {
        assertEquals(expected, underlined(aspect, 0, "saddle", "chop"));
    }

    @Test
    void number_binding_and_end_pieces_are_found_too() throws Refused {
        assertEquals("2", underlined(Aspect.NUMBER, 0, "saddle", "joint"));
        assertEquals("{\"kind\": \"tied\", \"times\": 4}", underlined(Aspect.BINDING, 0, "saddle", "joint"));
        assertEquals("\"mince\"", underlined(Aspect.END_PIECES, 0, "saddle", "slice"));
    }

    @Test
    void what_the_bench_is_told_is_found_in_the_description() throws Refused {
        assertEquals("{\"least\": 6, \"most\": 8}", underlined(Aspect.RIB_COUNT, 0, "saddle"));
        assertEquals(
                "{\"kind\": \"left\", \"tissue\": \"membrane\", \"reason\": \"for dice\"}",
                underlined(Aspect.TREATMENT, 1, "saddle"));
        assertEquals("\"haunch\"", underlined(Aspect.TURN, 0, "saddle"));
        assertEquals("\"drip\"", underlined(Aspect.TURN, 0, "saddle", "chine"));
        assertEquals(
                "{ \"kind\": \"within\", \"difference\": {\"amount\": 50, \"unit\": \"g\"} }",
                underlined(Aspect.MATCHING, 0, "saddle"));
    }

    @Test
    void a_tree_in_json_gets_the_rules_of_portions() {
        String json = Fixtures.smallestWith("""
                "streams": [{"name": "mince", "kind": "saleable"}],
                "parts": [
                  {
                    "kind": "cut", "name": "neck", "share": {"mean": 4, "unit": "%"},
                    "description": {"bench": {"matching": {"kind": "alike"}, "after": ["leg"]}},
                    "portions": [
                      {
                        "name": "steak", "target": {"mean": 180, "unit": "g"}, "thickness": {"mean": 25, "unit": "mm"},
                        "tares": [{"amount": -5, "unit": "g", "of": "twine"}],
                        "remainder": {"kind": "stream", "stream": "mince"}
                      },
                      {"name": "joint", "number": 0}
                    ]
                  },
                  {"kind": "rest", "home": {"kind": "stream", "stream": "mince"}}
                ]""");
        List<String> found =
                TreeJsonReader.read(new SourceText("tree.json", json), Limits.DEFAULT).diagnostics().stream()
                        .map((Diagnostic finding) -> finding.code().id())
                        .sorted()
                        .toList();
        assertEquals(List.of("G1401", "G1405", "G1406", "G1410", "G1411"), found);
    }
}
