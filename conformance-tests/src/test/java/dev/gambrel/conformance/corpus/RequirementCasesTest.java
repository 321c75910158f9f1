package dev.gambrel.conformance.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.Compilation;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.json.TreeJsonReader;
import dev.gambrel.json.TreeJsonWriter;
import dev.gambrel.text.SourceText;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.conformance.Conformance;
import dev.gambrel.yields.conformance.Question;
import dev.gambrel.yields.conformance.clause.Stated;
import java.nio.charset.StandardCharsets;
import java.util.List;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/** What a buyer can lay down, each clause by itself and where it is written. */
class RequirementCasesTest {
    private static final Compilation RACKS = new SpecCompiler()
            .compile(Corpus.folder("requirements").resolve("racks_that_a_buyer_asks_for.cuts"))
            .orElseThrow();

    @Test
    void every_line_lays_down_what_it_says_and_is_found_again() {
        Corpus.hold(
                clauses().stream().map(RequirementCasesTest::line).collect(Collectors.joining("\n", "", "\n")),
                Corpus.folder("requirements").resolve("racks_that_a_buyer_asks_for.expected"));
    }

    /** Held against a house that has only the rack, and lays nothing down. */
    private static List<Stated> clauses() {
        CutTree house = new SpecCompiler()
                .compile(
                        new SourceText(
                                "house.cuts", Sheets.hogget("cut best end 9.5 %, two per carcass\nrest -> mince\n")),
                        Sources.none())
                .orElseThrow()
                .tree();
        return Conformance.of(house, RACKS.tree(), Question.PLAIN).orElseThrow().answers().stream()
                .map(answer -> answer.asked())
                .toList();
    }

    private static String line(Stated stated) {
        Place place = RACKS.origins().written(stated.at());
        Place.InText at = ((Place.Written) place).text();
        return stated.clause().quality().words() + ": " + stated.clause().words() + "  <- "
                + at.text().slice(at.span());
    }

    @Test
    void a_requirement_goes_to_json_and_back() {
        byte[] json = TreeJsonWriter.write(RACKS.tree()).getBytes(StandardCharsets.UTF_8);
        assertEquals(RACKS.tree(), TreeJsonReader.read("racks.json", json).orElseThrow());
    }

    @Test
    void a_buyer_needs_no_share_no_stream_and_no_carcass_line() {
        var text = new SourceText("legs.cuts", """
                language 1
                use "catalogue:sheep"
                requirement "Legs" revision 1 for sheep
                cut leg, boneless {
                  trim fat to at most 5 mm at any point
                  portion steak, between 160 g and 180 g
                }
                """);
        var result = new SpecCompiler().compile(text, Sources.none());
        assertTrue(result.diagnostics().isEmpty(), Corpus.report(result.diagnostics()));
        assertTrue(result.orElseThrow().tree().isRequirement());
    }
}
