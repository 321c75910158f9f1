package dev.gambrel.conformance.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.batches.sheets.PriceCode;
import dev.gambrel.batches.sheets.SharesCode;
import dev.gambrel.batches.sheets.SheetCode;
import dev.gambrel.blends.BlendCode;
import dev.gambrel.cli.explain.Codes;
import dev.gambrel.compiler.Compilation;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.code.RestateCode;
import dev.gambrel.compiler.format.FormatCode;
import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.references.code.ReferenceCode;
import dev.gambrel.reports.png.ImageCode;
import dev.gambrel.yields.conformance.ConformanceCode;
import dev.gambrel.yields.conformance.number.NumberCode;
import dev.gambrel.yields.estimate.MeasurementCode;
import dev.gambrel.yields.packs.PackCode;
import dev.gambrel.yields.working.WorkingCode;
import java.nio.file.Path;
import java.util.List;
import java.util.Set;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every kind of finding has a page for cutters, whose examples do what the page says of them. */
class ExplainPagesTest {
    /** What no single short text can show: files as such, sizes and depths, and a kind that nothing reports yet. */
    private static final Set<String> WITHOUT_EXAMPLE =
            Set.of("G0101", "G0102", "G0103", "G0104", "G0105", "G0106", "G0110", "G0111", "G0112", "G0150", "G1312");

    @TempDir
    Path folder;

    static List<Code> codes() {
        return Codes.all();
    }

    static List<Code> codesWithExample() {
        return codes().stream().filter(code -> !isWithoutExample(code)).toList();
    }

    /** JSON, weights, readings and what a run asks for are not in a specification; what is wrong with a layout cannot be seen. */
    private static boolean isWithoutExample(Code code) {
        return WITHOUT_EXAMPLE.contains(code.id())
                || code instanceof WorkingCode
                || code instanceof NumberCode
                || code.id().startsWith("G09")
                || code.id().startsWith("G10")
                || code.id().startsWith("G17")
                || code instanceof FormatCode
                || code instanceof MeasurementCode
                || code instanceof BlendCode
                || code instanceof PackCode
                || code instanceof ConformanceCode
                || code instanceof ReferenceCode
                || code instanceof ImageCode
                || code instanceof PriceCode
                || code instanceof RestateCode
                || code instanceof SharesCode
                || code instanceof SheetCode;
    }

    @ParameterizedTest
    @MethodSource("codes")
    void a_page_has_its_title_and_four_parts(Code code) {
        ExplainPage page = ExplainPage.of(code);
        assertEquals("# " + code.id() + " " + code.slug(), page.title());
        assertFalse(page.meaning().isBlank(), "says what it means");
        assertFalse(page.why().isBlank(), "says why");
        String kind = isWithoutExample(code) ? "text" : "cuts";
        assertEquals(kind, page.kindOfExample("Wrong"));
        assertEquals(kind, page.kindOfExample("Right"));
    }

    @ParameterizedTest
    @MethodSource("codesWithExample")
    void the_wrong_example_shows_the_finding_and_no_other(Code code) {
        assertEquals(
                code.id(), Corpus.codes(compile(ExplainPage.of(code), "Wrong").diagnostics()));
    }

    @ParameterizedTest
    @MethodSource("codesWithExample")
    void the_right_example_compiles_without_it(Code code) {
        List<Diagnostic> found = compile(ExplainPage.of(code), "Right").diagnostics();
        assertFalse(Result.hasError(found), Corpus.report(found));
        assertTrue(found.stream().noneMatch(finding -> finding.code() == code), Corpus.report(found));
    }

    private Result<Compilation> compile(ExplainPage page, String heading) {
        Path file = folder.resolve("sheet.cuts");
        Corpus.write(page.other(), folder.resolve("hogget.cuts"));
        Corpus.write(page.example(heading), file);
        return new SpecCompiler().compile(file);
    }
}
