package dev.gambrel.batches.sheets;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import com.fasterxml.jackson.core.JsonProcessingException;
import com.fasterxml.jackson.databind.ObjectMapper;
import com.networknt.schema.JsonSchema;
import com.networknt.schema.JsonSchemaFactory;
import com.networknt.schema.SpecVersion;
import dev.gambrel.batches.sheets.SheetRow.Cell;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.PlainReport;
import dev.gambrel.diagnostic.PlainReport.Paint;
import dev.gambrel.text.SourceText;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** A sheet in JSON is the rows of the same sheet in cells, or it is told what has not its form. */
class SheetJsonTest {
    private static final String SHEET = """
            {
              "format": "gambrel weigh sheet",
              "version": 1,
              "specification": "Marram hogget",
              "revision": 3,
              "date": "2026-03-02",
              "scales": [{"name": "bench", "division": "5 g", "tare": "1 g"}],
              "carcass": {"weight": "22.00 kg", "basis": "cold"},
              "parts": [
                {"part": "leg", "pieces": "pair", "gross": 7.600, "tare": 0.340, "unit": "kg"},
                {"part": "neck", "pieces": 1, "gross": "0,880", "tare": 0, "unit": "kg", "weighings": 2}
              ]
            }
            """;
    private static final JsonSchema SCHEMA =
            JsonSchemaFactory.getInstance(SpecVersion.VersionFlag.V202012).getSchema(WeighSheetSchema.text());

    private final List<Diagnostic> found = new ArrayList<>();

    private Optional<List<SheetRow>> rows(String json) {
        return SheetJson.rows(new SourceText("monday.json", json), found::add);
    }

    private String report() {
        return new PlainReport(Paint.NONE).print(found, 10);
    }

    private static List<String> written(SheetRow row) {
        return row.cells().stream().map(Cell::written).toList();
    }

    private static boolean fitsSchema(String json) {
        try {
            return SCHEMA.validate(new ObjectMapper().readTree(json)).isEmpty();
        } catch (JsonProcessingException e) {
            throw new AssertionError(json, e);
        }
    }

    @Test
    void heading_columns_and_parts_are_rows_of_cells() {
        assertEquals(
                List.of(
                        List.of("specification", "Marram hogget"),
                        List.of("revision", "3"),
                        List.of("date", "2026-03-02"),
                        List.of("scale", "bench", "5 g", "1 g", ""),
                        List.of("carcass", "22.00 kg", "cold", ""),
                        List.of("part", "pieces", "gross", "tare", "unit", "scale", "weighings"),
                        List.of("leg", "pair", "7.600", "0.340", "kg", "", ""),
                        List.of("neck", "1", "0,880", "0", "kg", "", "2")),
                rows(SHEET).orElseThrow().stream().map(SheetJsonTest::written).toList());
        assertEquals(List.of(), found);
        assertTrue(fitsSchema(SHEET));
    }

    @ParameterizedTest
    @CsvSource({"7.600,7.600", "7.6e0,7.6", "76E-1,7.6", "1e3,1000", "1e-900,1e-900", "-7.6,-7.6"})
    void figures_stay_exactly_as_written(String figure, String cell) {
        List<SheetRow> rows = rows(SHEET.replace("7.600", figure)).orElseThrow();
        assertEquals(cell, rows.get(6).cell(2).written());
    }

    @Test
    void a_cell_stands_where_its_value_is_written() {
        rows(SHEET.replace("\"kg\"}", "null}"));
        assertEquals("""
                error G0913 (wrong-type) in monday.json, line 10
                  At /parts/0/unit stands the word null; it must be a number, or text in quotation marks.
                    10 |     {"part": "leg", "pieces": "pair", "gross": 7.600, "tare": 0.340, "unit": null},
                       |                                                                              ^^^^
                  → Leave out what is not stated.

                """, report());
    }

    @Test
    void a_misspelt_field_is_told_with_the_nearest() {
        assertEquals(Optional.empty(), rows(SHEET.replace("\"gross\": 7", "\"gros\": 7")));
        assertTrue(report().contains("Was \"gross\" meant?"), report());
    }

    @Test
    void two_fields_of_one_name_are_told() {
        assertEquals(Optional.empty(), rows(SHEET.replace("\"revision\": 3", "\"revision\": 3, \"revision\": 4")));
        assertTrue(report().contains("G0910"), report());
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "\"version\": 1 -> \"version\": 2",
                "weigh sheet -> cut tree",
                "\"format\": \"gambrel weigh sheet\", -> ",
                "\"bench\" -> [\"bench\"]",
                "\"leg\" -> true",
                "\"parts\": [ -> \"parts\": [7,",
                "\"date\" -> \"day\"",
                "{\"weight\": \"22.00 kg\", \"basis\": \"cold\"} -> \"22.00 kg\""
            })
    void what_the_schema_refuses_is_refused(String slip) {
        String[] change = slip.split(" ?-> ?", -1);
        String json = SHEET.replaceFirst(java.util.regex.Pattern.quote(change[0]), change[1]);
        assertEquals(Optional.empty(), rows(json), json);
        assertTrue(!found.isEmpty() && !fitsSchema(json), json);
    }

    @Test
    void several_sheets_are_several_files() {
        assertEquals(Optional.empty(), rows("[" + SHEET + "]"));
        assertTrue(report().contains("At the top of the file stands a list"), report());
    }

    @Test
    void it_is_told_by_its_ending_or_its_first_character() {
        assertEquals(SheetForm.JSON, SheetForm.of(new SourceText("monday.JSON", "part,")));
        assertEquals(SheetForm.JSON, SheetForm.of(new SourceText("monday", "  \n{")));
        assertEquals(SheetForm.CSV, SheetForm.of(new SourceText("monday.csv", "part,")));
    }
}
