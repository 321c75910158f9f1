package dev.gambrel.conformance.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.batches.sheets.WeighSheet;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.diagnostic.Severity;
import dev.gambrel.text.SourceText;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** A sheet says the same in JSON as in cells, right or wrong; and nothing that is sent as one does harm. */
class SheetsInJsonLaws {
    private static final CutTree TREE = new SpecCompiler()
            .compile(new SourceText("hogget.cuts", Sheets.hogget("""
                            cut leg, two per carcass, 33.0 % ± 0.9 % {
                              cut chump 15.0 % ± 0.6 %
                              loss saw 0.5 % ± 0.1 %
                              rest -> mince
                            }
                            cut neck, one per carcass, 4.0 % ± 0.3 %
                            loss drip 0.5 % ± 0.1 %
                            rest -> mince
                            """)), Sources.none())
            .orElseThrow()
            .tree();
    private static final List<String> COLUMNS =
            List.of("part", "pieces", "gross", "tare", "unit", "scale", "weighings");

    /** One row of a table, as cells. */
    private record Row(List<String> cells) {
        String csv() {
            return cells.stream().map(cell -> "\"" + cell + "\"").collect(Collectors.joining(","));
        }

        String json() {
            StringBuilder object = new StringBuilder();
            for (int c = 0; c < cells.size(); c++) {
                object.append(c == 0 ? "{" : ", ").append("\"" + COLUMNS.get(c) + "\": \"" + cells.get(c) + "\"");
            }
            return object + "}";
        }
    }

    @Provide
    Arbitrary<Row> rows() {
        return Combinators.combine(
                        Arbitraries.of("leg", "chump", "leg / rest", "neck", "Neck", "lag", "rest", "leg trimmed", ""),
                        Arbitraries.of("pair", "single", "side", "all", "1", "2", "3", "both", ""),
                        Arbitraries.of("7.600", "0.88", "880", "7,600", "7 600", "-1", "", "seven", "1e3", "16.0"),
                        Arbitraries.of("0", "0.340", "340", "9", "", "-0.1"),
                        Arbitraries.of("kg", "kg", "g", "lb", "oz", "st", "%", ""),
                        Arbitraries.of("bench", "rail", "Bench", "table", ""),
                        Arbitraries.of("1", "2", "999", "0", "1000", "two", ""))
                .as((part, pieces, gross, tare, unit, scale, times) ->
                        new Row(List.of(part, pieces, gross, tare, unit, scale, times)))
                .filter(row -> !row.cells().stream().allMatch(String::isEmpty));
    }

    private static String csv(List<Row> rows) {
        return """
                specification,Marram hogget
                revision,3
                scale,bench,5 g,1 g
                scale,rail,20 g,0 g,0.1 %
                carcass,22.00 kg,cold,rail
                """ + String.join(",", COLUMNS) + "\n"
                + rows.stream().map(Row::csv).collect(Collectors.joining("\n"));
    }

    private static String json(List<Row> rows) {
        return """
                {"format": "gambrel weigh sheet", "version": 1, "specification": "Marram hogget", "revision": 3,
                 "scales": [{"name": "bench", "division": "5 g", "tare": "1 g"},
                            {"name": "rail", "division": "20 g", "tare": "0 g", "calibration": "0.1 %"}],
                 "carcass": {"weight": "22.00 kg", "basis": "cold", "scale": "rail"},
                 "parts": [
                """ + rows.stream().map(Row::json).collect(Collectors.joining(",\n")) + "]}";
    }

    private static Result<WeighSheet> read(String name, String text) {
        return WeighSheet.read(new SourceText(name, text), TREE, Working.AS_WRITTEN);
    }

    private static List<String> told(Result<WeighSheet> read) {
        return read.diagnostics().stream()
                .map(finding -> finding.code().id() + " " + finding.message())
                .toList();
    }

    /** The same findings in the same words; without an error the same heading and the same readings. */
    @Property(tries = 500)
    void a_sheet_says_the_same_in_both_forms(@ForAll("rows") Row first, @ForAll("lists") List<Row> more) {
        List<Row> rows = new ArrayList<>(more);
        rows.add(first);
        Result<WeighSheet> cells = read("monday.csv", csv(rows));
        Result<WeighSheet> object = read("monday.json", json(rows));
        assertEquals(told(cells), told(object));
        assertEquals(cells.value().map(WeighSheet::heading), object.value().map(WeighSheet::heading));
        assertEquals(cells.value().map(WeighSheet::readings), object.value().map(WeighSheet::readings));
    }

    @Provide
    Arbitrary<List<Row>> lists() {
        return rows().list().ofMaxSize(5);
    }

    /** No row is lost: each gives a reading or an error that stands in it. */
    @Property(tries = 500)
    void each_row_is_read_or_told(@ForAll("lists") List<Row> rows) {
        for (String name : List.of("monday.csv", "monday.json")) {
            Result<WeighSheet> read = read(name, name.endsWith("csv") ? csv(rows) : json(rows));
            Set<Integer> faulted = read.diagnostics().stream()
                    .filter(finding -> finding.severity() == Severity.ERROR)
                    .map(SheetsInJsonLaws::line)
                    .collect(Collectors.toSet());
            read.value()
                    .ifPresent(sheet ->
                            assertEquals(rows.size() + 1, sheet.readings().size()));
            assertEquals(read.value().isEmpty(), !faulted.isEmpty());
            for (int r = 0; r < rows.size(); r++) {
                List<Row> one = rows.subList(r, r + 1);
                Result<WeighSheet> alone = read(name, name.endsWith("csv") ? csv(one) : json(one));
                assertTrue(alone.value().isPresent() || faulted.contains(r + (name.endsWith("csv") ? 7 : 6)), name);
            }
        }
    }

    private static int line(Diagnostic finding) {
        return finding.place() instanceof Place.InText text
                ? text.text().position(text.span().start()).line()
                : 0;
    }

    @Provide
    Arbitrary<String> scraps() {
        String sheet = json(List.of(new Row(List.of("leg", "pair", "7.600", "0", "kg", "bench", "1"))));
        Arbitrary<String> pieces = Arbitraries.of(
                        "{",
                        "}",
                        "[",
                        "]",
                        ",",
                        ":",
                        "\"",
                        "\\",
                        "null",
                        "-1",
                        "1e9",
                        "1e-99999",
                        "\"parts\":",
                        "\"part\":",
                        "\"scales\":",
                        "\"carcass\":",
                        "\"gross\":",
                        "{}",
                        "[]",
                        "\ud83d",
                        "\u0000",
                        "\u202e",
                        "9".repeat(50))
                .list()
                .ofMaxSize(12)
                .map(scraps -> String.join("", scraps));
        return Combinators.combine(
                        Arbitraries.integers().between(0, sheet.length()),
                        Arbitraries.integers().between(0, 30),
                        pieces)
                .as((at, gone, put) ->
                        sheet.substring(0, at) + put + sheet.substring(Math.min(sheet.length(), at + gone)));
    }

    @Property(tries = 1000)
    void whatever_is_sent_is_read_or_refused_with_reasons(@ForAll("scraps") String text) {
        Result<WeighSheet> read = read("monday.json", text);
        assertTrue(read.value().isPresent() != Result.hasError(read.diagnostics()));
        Corpus.report(read.diagnostics());
    }

    @Property(tries = 300)
    void any_text_at_all_is_read_or_refused_with_reasons(@ForAll String text) {
        Result<WeighSheet> read = read("monday.json", text);
        assertTrue(read.value().isEmpty() && Result.hasError(read.diagnostics()));
        Corpus.report(read.diagnostics());
    }
}
