package dev.gambrel.conformance.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.Compilation;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.text.SourceText;
import dev.gambrel.yields.conformance.Conformance;
import dev.gambrel.yields.conformance.Conformity;
import dev.gambrel.yields.conformance.Overall;
import dev.gambrel.yields.conformance.Question;
import dev.gambrel.yields.conformance.Verdict;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** Requirements that would have more than is undertaken, and what comes back. */
class SlyRequirementsTest {
    private static final String HOUSE = Sheets.hogget("""
            keep at most 4 °C
            cut leg 33 %, two per carcass {
              reference UNECE 4800 edition 2006
              weight between 3 kg and 4 kg
              trim fat to at most 3 mm at any point 1 % -> mince
              cut shank 12 %, bone in
              rest -> mince
            }
            cut shoulder 20 %, two per carcass {
              weight at most 1.32 kg, at most 1 in 10 outside
              cut shank 15 %, bone in
              rest -> mince
            }
            rest -> mince
            """);

    private static Result<Compilation> buyer(String lines) {
        String text = "language 1\nuse \"catalogue:sheep\"\nrequirement \"Sly\" revision 1 for sheep\n" + lines;
        return new SpecCompiler().compile(new SourceText("sly.cuts", text), Sources.none());
    }

    private static Conformity answer(String lines) {
        var house = new SpecCompiler()
                .compile(new SourceText("house.cuts", HOUSE), Sources.none())
                .orElseThrow();
        return Conformance.of(house.tree(), buyer(lines).orElseThrow().tree(), Question.PLAIN)
                .orElseThrow();
    }

    private static String codes(Conformity conformity) {
        return Corpus.codes(
                conformity.answers().stream().map(answer -> answer.reason()).toList());
    }

    @Test
    void one_word_for_two_shanks_is_asked_about_and_its_place_settles_it() {
        Conformity open = answer("cut shank, bone in\n");
        assertEquals("G2232", Corpus.codes(open.products().get(0).findings()));
        assertEquals(Overall.NOT_SHOWN, open.overall());
        assertEquals(
                Overall.CONFORMS, answer("cut leg {\n  cut shank, bone in\n}\n").overall());
    }

    @Test
    void a_word_that_means_two_pieces_of_the_animal_is_not_settled_by_a_name() {
        Result<Compilation> read = buyer("cut chump, also leg, bone in\n");
        assertFalse(Result.hasError(read.diagnostics()), Corpus.report(read.diagnostics()));
        assertEquals(Overall.NOT_SHOWN, answer("cut chump, also leg, bone in\n").overall());
    }

    @Test
    void pounds_and_ounces_are_no_way_round_a_limit() {
        // 2.9 lb are 1.315417873 kg, less than 1.32 kg.
        assertEquals("G2211", codes(answer("cut shoulder {\n  weight at most 2.9 lb, at most 1 in 10 outside\n}\n")));
        assertEquals(
                "G2201", codes(answer("cut shoulder {\n  weight at most 2 lb 15 oz, at most 1 in 10 outside\n}\n")));
    }

    @Test
    void forty_degrees_fahrenheit_are_four_and_four_ninths_celsius() {
        assertEquals("G2201", codes(answer("cut leg {\n  keep at most 40 °F\n}\n")));
        assertEquals("G2211", codes(answer("cut leg {\n  keep at most 39 °F\n}\n")));
    }

    @Test
    void how_many_may_be_outside_is_part_of_the_limit() {
        assertEquals("G2212", codes(answer("cut shoulder {\n  weight at most 1.4 kg, at most 1 in 20 outside\n}\n")));
        assertEquals("G2212", codes(answer("cut shoulder {\n  weight at most 1.4 kg\n}\n")));
    }

    @Test
    void any_point_proves_an_average_no_lower() {
        assertEquals(
                "G2201 G2202",
                codes(answer("cut leg {\n  trim fat to at most 3 mm at any point and at most 3 mm on average\n}\n")));
        assertEquals("G2225", codes(answer("cut leg {\n  trim fat to at most 2 mm on average\n}\n")));
    }

    @Test
    void a_number_of_another_edition_is_not_the_same_number() {
        assertEquals("G2227", codes(answer("cut leg {\n  reference UNECE 4800 edition 2016\n}\n")));
    }

    @Test
    void what_holds_for_all_gives_way_to_what_a_cut_says_itself() {
        assertEquals("G2201", codes(answer("keep at most 1 °C\ncut leg {\n  keep at most 5 °C\n}\n")));
        assertEquals(
                "G2211",
                codes(answer("keep at most 1 °C\ncut leg {\n  weight at most 5 kg\n}\n"))
                        .replace("G2201 ", ""));
    }

    @Test
    void a_name_that_turns_the_line_round_is_refused_before_it_is_compared() {
        Result<Compilation> read = buyer("cut \"leg\u202Eecin\", bone in\n");
        assertTrue(Result.hasError(read.diagnostics()));
        assertFalse(Corpus.report(read.diagnostics()).contains("\u202E"));
    }

    @Test
    void nothing_asked_is_not_conformed_to() {
        assertTrue(Result.hasError(buyer("").diagnostics()));
        assertEquals(Overall.NOT_SHOWN, answer("cut leg\n").overall());
    }

    @Test
    void five_thousand_clauses_get_five_thousand_answers() {
        String claims = IntStream.range(0, 5000)
                .mapToObj(i -> "claim \"claim " + i + "\"")
                .collect(Collectors.joining("\n"));
        Result<Compilation> read = buyer("cut leg {\n" + claims + "\n}\n");
        assertEquals(List.of(), read.diagnostics(), Corpus.report(read.diagnostics()));
        Conformity conformity = answer("cut leg {\n" + claims + "\n}\n");
        assertEquals(5000, conformity.count(Verdict.NOT_STATED));
    }
}
