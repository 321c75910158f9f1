package dev.gambrel.conformance.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.batches.BatchCode;
import dev.gambrel.batches.sheets.PriceCode;
import dev.gambrel.batches.sheets.SharesCode;
import dev.gambrel.batches.sheets.SheetCode;
import dev.gambrel.blends.BlendCode;
import dev.gambrel.cli.explain.Codes;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.code.MeaningCode;
import dev.gambrel.compiler.code.RestateCode;
import dev.gambrel.compiler.format.FormatCode;
import dev.gambrel.compiler.source.FileCode;
import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.json.located.JsonCode;
import dev.gambrel.references.code.ReferenceCode;
import dev.gambrel.reports.png.ImageCode;
import dev.gambrel.yields.YieldCode;
import dev.gambrel.yields.conformance.ConformanceCode;
import dev.gambrel.yields.conformance.number.NumberCode;
import dev.gambrel.yields.estimate.MeasurementCode;
import dev.gambrel.yields.packs.PackCode;
import dev.gambrel.yields.working.WorkingCode;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.TreeSet;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Every kind of finding is in the corpus, at an exact place in a text. */
class EveryCodeHasACaseTest {
    /** What cannot be underlined, and why. */
    private static final Map<Code, String> EXEMPT = Map.of(
            FileCode.TOO_MANY_LINES, "it is found of a file as a whole",
            MeaningCode.NO_LANGUAGE, "what is not there has no words; the first character is marked",
            MeaningCode.NO_SPECIFICATION, "what is not there has no words; the first character is marked");

    @Test
    void every_kind_of_finding_underlines_words_of_some_case(@TempDir Path temporary) {
        Set<String> underlined = new TreeSet<>();
        cases(temporary)
                .flatMap(List::stream)
                .filter(finding -> isUnderlined(finding.place()))
                .forEach(finding -> underlined.add(finding.code().id()));
        Set<String> wanted = new TreeSet<>();
        Codes.all().stream().filter(code -> !isExempt(code)).forEach(code -> wanted.add(code.id()));
        assertEquals(wanted, underlined);
    }

    /** A tree in JSON, a weight, a reading and what a run asks for are not in a specification; what is laid out is not compiled. */
    private static boolean isExempt(Code code) {
        return EXEMPT.containsKey(code)
                || code instanceof JsonCode
                || code instanceof YieldCode
                || code instanceof NumberCode
                || code instanceof BatchCode
                || code instanceof WorkingCode
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

    private static Stream<List<Diagnostic>> cases(Path temporary) {
        Stream<Path> files = Stream.concat(
                InvalidCasesTest.files().stream(),
                InvalidCasesTest.folders().stream().map(folder -> folder.resolve("main.cuts")));
        return Stream.concat(
                files.map(file -> new SpecCompiler().compile(file).diagnostics()),
                Stream.of(HostileCase.values())
                        .map(hostile -> hostile.compileIn(temporary).diagnostics()));
    }

    private static boolean isUnderlined(Place place) {
        Place at = place instanceof Place.Written written ? written.text() : place;
        return at instanceof Place.InText text && text.span().length() > 0;
    }

    @Test
    void what_is_exempt_has_a_case_all_the_same() {
        Set<String> announced = new TreeSet<>();
        InvalidCasesTest.files().forEach(file -> announced.add(Corpus.announced(file)));
        Stream.of(HostileCase.values()).forEach(hostile -> announced.add(hostile.codes()));
        EXEMPT.forEach((code, reason) -> assertTrue(announced.contains(code.id()), code.id() + ": " + reason));
    }

    @Test
    void no_two_kinds_share_a_number_or_a_name() {
        List<Code> all = Codes.all();
        assertEquals(all.size(), all.stream().map(Code::id).distinct().count());
        assertEquals(all.size(), all.stream().map(Code::slug).distinct().count());
    }

    @Test
    void every_fault_of_a_reading_has_a_case() {
        Set<String> covered = new TreeSet<>();
        Stream.of(ReadingSlip.values()).forEach(slip -> covered.add(slip.code()));
        Stream.of(MeasurementCode.values()).forEach(code -> assertTrue(covered.contains(code.id()), code.id()));
    }

    @Test
    void every_fault_of_a_json_file_has_a_case() {
        Set<String> covered = new TreeSet<>(Set.of("G0902", "G0907"));
        Stream.of(JsonSlip.values()).forEach(slip -> covered.add(slip.codes()));
        for (Code code : JsonCode.values()) {
            assertTrue(covered.contains(code.id()), code.id());
        }
    }
}
