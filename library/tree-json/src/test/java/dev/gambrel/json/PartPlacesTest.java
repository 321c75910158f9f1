package dev.gambrel.json;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
import dev.gambrel.tree.allowance.AllowanceCode;
import java.util.Arrays;
import org.junit.jupiter.api.Test;

/** What a rule of the tree says of a part is underlined where the part stands in the JSON. */
class PartPlacesTest {
    private final SourceText text = new SourceText("hogget.json", Fixtures.marramHogget());

    private static final String TWO_SHANKS = Fixtures.smallestWith(
            "\"parts\": ["
                    + "{\"kind\": \"cut\", \"name\": \"shank\"}, {\"kind\": \"rest\"}, {\"kind\": \"cut\", \"name\": \"Shank\"}]");

    private String underlined(Aspect aspect, int index, String... path) throws Refused {
        TreePath names = new TreePath(Arrays.stream(path).map(TradeName::of).toList());
        Place.InTree place = new Place.InTree(names, aspect, index);
        PartPlaces places = new PartPlaces(text, LocatedParser.parse(text, new Findings(text), Limits.DEFAULT));
        Place.Written written = (Place.Written) places.written(place);
        assertEquals(place, written.tree());
        return text.slice(written.text().span());
    }

    @Test
    void a_cut_is_underlined_at_its_name() throws Refused {
        assertEquals("\"leg\"", underlined(Aspect.NAME, 0, "leg"));
        assertEquals("\"femur\"", underlined(Aspect.NAME, 0, "Leg", "FEMUR"));
    }

    @Test
    void a_share_is_underlined_as_a_whole() throws Refused {
        assertEquals("{\"mean\": 7, \"unit\": \"%\"}", underlined(Aspect.SHARE, 0, "leg", "femur"));
    }

    @Test
    void a_portion_is_found_under_its_cut() throws Refused {
        assertEquals("{\"low\": 170, \"high\": 190, \"unit\": \"g\"}", underlined(Aspect.LIMIT, 0, "leg", "steak"));
    }

    @Test
    void a_rest_is_found_by_its_kind() throws Refused {
        assertEquals("\"mince\"", underlined(Aspect.STREAM, 0, "rest"));
        assertEquals("\"rest\"", underlined(Aspect.NAME, 0, "rest"));
    }

    @Test
    void the_second_of_two_parts_of_one_name_is_found_by_its_number() throws Refused {
        SourceText two = new SourceText("two.json", TWO_SHANKS);
        PartPlaces places = new PartPlaces(two, LocatedParser.parse(two, new Findings(two), Limits.DEFAULT));
        TreePath shank = TreePath.ROOT.then(TradeName.of("shank"));
        Place.Written second = (Place.Written) places.written(new Place.InTree(shank, Aspect.NAME, 1));
        assertEquals("\"Shank\"", two.slice(second.text().span()));
    }

    @Test
    void what_is_allowed_is_found_by_its_number_whatever_it_is_allowed_for() throws Refused {
        String allowing = Fixtures.marramHogget()
                .replaceFirst(
                        "\"revision\": 3",
                        "\"revision\": 3, \"allowances\": ["
                                + "{\"path\": [\"leg\"], \"finding\": \"pair-unsaid\", \"reason\": \"as agreed\"}]");
        Diagnostic finding = TreeJsonReader.read(new SourceText("hogget.json", allowing), Limits.DEFAULT)
                .diagnostics()
                .get(0);
        assertEquals(AllowanceCode.UNUSED_ALLOWANCE, finding.code());
        Place.InText in = ((Place.Written) finding.place()).text();
        assertTrue(in.text().slice(in.span()).startsWith("{\"path\": [\"leg\"], \"finding\": \"pair-unsaid\""));
    }

    @Test
    void streams_and_sources_are_found_by_their_number() throws Refused {
        assertEquals("{\"name\": \"bones\", \"kind\": \"by-product\"}", underlined(Aspect.STREAM, 1));
        assertEquals("\"house tests\"", underlined(Aspect.SOURCE, 0, "leg"));
        assertTrue(underlined(Aspect.SOURCE, 0).startsWith("{\"name\": \"house tests\""));
    }

    @Test
    void what_is_said_of_a_cut_is_found_in_its_description() throws Refused {
        assertEquals("\"part boned\"", underlined(Aspect.BONE_STATE, 0, "leg"));
        assertEquals("\"thigh bone\"", underlined(Aspect.CONTENTS, 0, "leg"));
        assertTrue(underlined(Aspect.SEPARATION, 0, "leg").contains("\"saw\""));
    }

    @Test
    void what_is_wrong_with_the_carcass_is_shown_there() throws Refused {
        assertTrue(underlined(Aspect.NAME, 0).contains("\"basis\""));
    }

    @Test
    void the_band_is_underlined_under_the_carcass() throws Refused {
        assertEquals("{\"low\": 20, \"high\": 24, \"unit\": \"kg\"}", underlined(Aspect.BAND, 0));
    }

    @Test
    void one_of_several_steps_is_found_by_its_number() throws Refused {
        assertTrue(underlined(Aspect.STEP, 0).contains("chill shrink"));
    }

    @Test
    void a_term_is_shown_at_its_estimate_and_a_measure_is_found_by_its_number() throws Refused {
        SourceText every = new SourceText("every.json", Fixtures.everyKind());
        PartPlaces places = new PartPlaces(every, LocatedParser.parse(every, new Findings(every), Limits.DEFAULT));
        TreePath lean = TreePath.ROOT.then(TradeName.of("Lean"));
        Place.Written term = (Place.Written) places.written(new Place.InTree(lean, Aspect.TERM, 2));
        assertTrue(every.slice(term.text().span()).contains("\"name\": \"lean\""));
        Place.Written second = (Place.Written) places.written(new Place.InTree(TreePath.ROOT, Aspect.MEASURE, 1));
        assertTrue(every.slice(second.text().span()).contains("\"name\": \"muscling\""));
    }

    @Test
    void what_stands_nowhere_is_shown_at_the_part_above_it() throws Refused {
        assertEquals("\"leg\"", underlined(Aspect.NAME, 0, "leg", "unwritten"));
    }

    @Test
    void a_share_that_is_not_stated_is_shown_at_the_name() throws Refused {
        assertEquals("\"gland\"", underlined(Aspect.SHARE, 0, "leg", "gland"));
    }

    @Test
    void every_aspect_of_every_kind_of_part_has_a_place() throws Refused {
        for (Aspect aspect : Aspect.values()) {
            assertTrue(underlined(aspect, 99, "leg", "saw dust").length() > 0);
            assertTrue(underlined(aspect, 0).length() > 0);
        }
    }
}
