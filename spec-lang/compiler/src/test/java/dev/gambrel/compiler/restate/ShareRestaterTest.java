package dev.gambrel.compiler.restate;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.Compilation;
import dev.gambrel.compiler.Compiled;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.code.RestateCode;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Source;
import java.math.BigDecimal;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;

class ShareRestaterTest {
    private static final Source TESTS =
            new Source(TradeName.of("cutting tests"), Source.Kind.MEASURED, "3 cutting tests, invented for this test");
    private static final String DECLARED =
            "source cutting tests, measured \"3 cutting tests, invented for this test\"\n";

    private static TreePath path(String... names) {
        TreePath path = TreePath.ROOT;
        for (String name : names) {
            path = path.then(TradeName.of(name));
        }
        return path;
    }

    private static RestatedShare share(String percent, String points, String... part) {
        return new RestatedShare(
                path(part),
                new BigDecimal(percent),
                points.isEmpty() ? new RestatedShare.AsWritten() : new RestatedShare.Points(new BigDecimal(points)));
    }

    private static Result<Restatement> restate(Map<String, String> files, RestatedCut... cuts) {
        Sources sources = Compiled.files(files);
        Compilation compilation = new SpecCompiler()
                .compile(new SourceText("main.cuts", files.get("main.cuts")), sources)
                .orElseThrow();
        return ShareRestater.restate(compilation, sources, Limits.DEFAULT, List.of(cuts));
    }

    private static Result<Restatement> restate(String lines, RestatedShare... shares) {
        return restate(Map.of("main.cuts", Compiled.HEAD + lines), carcass(shares));
    }

    private static RestatedCut carcass(RestatedShare... shares) {
        return new RestatedCut(TreePath.ROOT, List.of(shares), TESTS);
    }

    /** The lines after the head, without the source that is declared. */
    private static String after(String lines, RestatedShare... shares) {
        List<RestatedText> texts = restate(lines, shares).orElseThrow().texts();
        return texts.get(0).after().text().replace(DECLARED, "").replace(Compiled.HEAD, "");
    }

    private static String leg(String figure) {
        return "cut leg, two per carcass, " + figure + " {\n  rest -> mince\n}\nrest -> mince\n";
    }

    @Test
    void a_figure_and_its_spread_change_and_what_they_rest_on() {
        assertEquals(
                leg("32.4 % ± 1.1 %, source cutting tests"), after(leg("33.0 % ± 0.9 %"), share("32.4", "1.1", "leg")));
    }

    @Test
    void a_spread_that_nobody_knows_better_stays() {
        assertEquals(
                leg("32.4 % +/- 0.9 %, source cutting tests"),
                after(leg("33.0 % +/- 0.9 %"), share("32.4", "", "leg")));
    }

    @Test
    void a_unit_that_stands_once_stands_once_still() {
        assertEquals(
                leg("32.4 ± 1.1 %, source cutting tests"), after(leg("33.0 ± 0.9 %"), share("32.4", "1.1", "leg")));
    }

    @Test
    void a_spread_is_put_in_where_none_was_stated() {
        assertEquals(leg("32.4 % ± 1.1 %, source cutting tests"), after(leg("33 %"), share("32.4", "1.1", "leg")));
    }

    @Test
    void a_range_becomes_a_mean_with_its_spread_or_is_shifted_as_it_is() {
        String range = leg("31.2 % to 34.8 %");
        assertEquals(leg("32.4 % ± 1.1 %, source cutting tests"), after(range, share("32.4", "1.1", "leg")));
        assertEquals(leg("30.6 % to 34.2 %, source cutting tests"), after(range, share("32.4", "", "leg")));
    }

    @Test
    void a_number_that_is_the_same_in_other_digits_is_no_change() {
        assertEquals(
                List.of(),
                restate(leg("33 % ± 0.90 %"), share("33.0", "0.9", "leg"))
                        .orElseThrow()
                        .texts());
    }

    @Test
    void the_source_of_the_line_gives_way_to_the_tests() {
        String before = "source old book, memory \"from memory\"\n" + leg("33.0 %, source old book, bone in");
        assertEquals(
                before.replace("33.0 %, source old book", "32.4 %, source cutting tests"),
                after(before, share("32.4", "", "leg")));
    }

    @Test
    void the_tests_are_declared_after_the_sources_that_there_are_with_their_comment() {
        String before = "source old book, memory \"from memory\" // ask the foreman\n" + leg("33.0 %");
        RestatedText text =
                restate(before, share("32.4", "", "leg")).orElseThrow().texts().get(0);
        assertTrue(
                text.after().text().contains("// ask the foreman\n" + DECLARED),
                text.after().text());
    }

    @Test
    void a_source_that_is_declared_already_is_not_declared_again() {
        RestatedText text = restate(DECLARED + leg("33.0 %"), share("32.4", "", "leg"))
                .orElseThrow()
                .texts()
                .get(0);
        assertEquals(
                Compiled.HEAD + DECLARED + leg("32.4 %, source cutting tests"),
                text.after().text());
    }

    @Test
    void comments_gaps_and_line_ends_stay() {
        String before =
                ("cut leg ,two per carcass,   // both\n   33.0 %   ±  0.9 %  { // jointed\n\n\n rest->mince\n}\n"
                                + "rest   -> mince // all\n")
                        .replace("\n", "\r\n");
        List<RestatedText> texts = restate(
                        Map.of("main.cuts", Compiled.HEAD.replace("\n", "\r\n") + before),
                        carcass(share("32.4", "1.1", "leg")))
                .orElseThrow()
                .texts();
        String after = texts.get(0).after().text();
        assertEquals(
                Compiled.HEAD.replace("\n", "\r\n") + before,
                after.replace(DECLARED.replace("\n", "\r\n"), "")
                        .replace("32.4", "33.0")
                        .replace("1.1", "0.9")
                        .replace(", source cutting tests", ""));
        assertEquals(after, after.replace("\r\n", "\n").replace("\n", "\r\n"), "every line ends as before");
    }

    @Test
    void only_the_file_that_holds_the_line_changes_and_the_one_that_declares_the_tests() {
        Map<String, String> files = Map.of(
                "main.cuts", Compiled.HEAD + "use \"leg.cuts\"\nuse \"note.cuts\"\nrest -> mince\n",
                "note.cuts", "language 1\nnote \"hang first\"\n",
                "leg.cuts", "language 1\n" + leg("33.0 %").replace("}\nrest -> mince\n", "}\n"));
        List<RestatedText> texts =
                restate(files, carcass(share("32.4", "", "leg"))).orElseThrow().texts();
        assertEquals(
                List.of("leg.cuts", "main.cuts"),
                texts.stream().map(text -> text.before().name()).toList());
        assertTrue(texts.get(0).after().text().contains("32.4 %, source cutting tests"));
        assertTrue(texts.get(1).after().text().contains(DECLARED));
    }

    @Test
    void a_revision_is_not_edited() {
        Map<String, String> files = Map.of(
                "old.cuts", Compiled.HEAD + leg("33.0 %"),
                "main.cuts",
                        "language 1\nrevises \"old.cuts\"\nspecification \"Marram hogget\" revision 4 for sheep\n"
                                + "cut leg 32 %, difference to rest\n");
        assertEquals(
                List.of(RestateCode.OF_REVISION), Compiled.codes(restate(files, carcass(share("32.4", "", "leg")))));
    }

    @Test
    void an_estimated_share_is_not_overwritten_and_its_cut_is_left_alone() {
        String lines = "measure back fat, in mm, 2 mm to 15 mm\n"
                + "estimate legs = 36.2 % - 0.31 % per mm × back fat, ± 0.9 %\n"
                + "cut leg, two per carcass, estimated by legs\ncut loin, two per carcass, 11 %\nrest -> mince\n";
        Result<Restatement> result = restate(lines, share("11.4", "", "loin"), share("32.4", "", "leg"));
        assertEquals(List.of(RestateCode.CUT_NOT_RESTATED), Compiled.codes(result));
        assertEquals(List.of(), result.orElseThrow().texts());
        assertEquals("leg", Compiled.underlined(result.diagnostics().get(0)));
    }

    @Test
    void of_several_sources_nobody_knows_which_no_longer_holds() {
        String lines = "source a, memory \"one\"\nsource b, memory \"other\"\n" + leg("33 %, source a, source b");
        assertEquals(List.of(RestateCode.CUT_NOT_RESTATED), Compiled.codes(restate(lines, share("32.4", "", "leg"))));
    }

    @Test
    void a_trim_without_a_share_gets_none_unasked() {
        String lines = "cut leg, two per carcass, 33 % {\n  remove silverskin -> mince\n}\nrest -> mince\n";
        RestatedCut leg = new RestatedCut(path("leg"), List.of(share("1.5", "0.4", "leg", "silverskin")), TESTS);
        assertEquals(
                List.of(RestateCode.CUT_NOT_RESTATED),
                Compiled.codes(restate(Map.of("main.cuts", Compiled.HEAD + lines), leg)));
    }

    @Test
    void a_second_share_that_no_longer_fits_stands_against_all_of_it() {
        String lines = "cut leg, two per carcass, 33.0 % {\n  cut shank 13.0 %, 4.29 % of carcass\n  rest -> mince\n}\n"
                + "rest -> mince\n";
        Result<Restatement> result = restate(lines, share("30.0", "", "leg"));
        assertEquals(List.of(RestateCode.WITH_ERRORS), Compiled.codes(result));
        assertTrue(result.value().isEmpty());
    }

    @Test
    void shares_that_miss_the_whole_by_a_hair_are_not_offered() {
        String lines = "cut leg, two per carcass, 33.0 % -> mince\ncut rest of it, one per carcass, 67.0 % -> mince\n";
        Result<Restatement> result = restate(lines, share("33.0", "", "leg"), share("66.98", "", "rest of it"));
        assertEquals(List.of(RestateCode.WITH_ERRORS), Compiled.codes(result));
        assertTrue(result.diagnostics().get(0).message().contains("100 %"), result.toString());
    }

    @Test
    void a_name_that_is_no_plain_word_and_words_with_marks_in_them_are_quoted() {
        Source odd = new Source(TradeName.of("tests of 2026-03-17"), Source.Kind.MEASURED, "the \"good\" scale, C:\\x");
        RestatedCut cut = new RestatedCut(TreePath.ROOT, List.of(share("32.4", "", "leg")), odd);
        RestatedText text = restate(Map.of("main.cuts", Compiled.HEAD + leg("33 %")), cut)
                .orElseThrow()
                .texts()
                .get(0);
        assertTrue(
                text.after().text().contains("32.4 %, source \"tests of 2026-03-17\""),
                text.after().text());
        assertEquals(
                odd,
                Compiled.text(text.after().text())
                        .orElseThrow()
                        .tree()
                        .sources()
                        .get(0));
    }
}
