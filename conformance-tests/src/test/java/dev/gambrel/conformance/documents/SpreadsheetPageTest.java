package dev.gambrel.conformance.documents;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.SourceText;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.CarcassWeight;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.YieldRow;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.plan.Kind;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;

/** The specification that the page arrives at gives the spreadsheet back that it began with. */
class SpreadsheetPageTest {
    private static final String PAGE = "spec-lang/FROM-A-SPREADSHEET.md";
    private static final Pattern ROW = Pattern.compile("(?m)^\\| (–? ?)([^|,]+?)(?:, [^|]*)? \\| (\\d+\\.\\d\\d) \\|");
    /** Half of the last figure of the sheet, and what rounding the shares to a tenth of a per cent may move. */
    private static final double ROUNDING = 0.005 + 7.26 * 0.0005;

    /** What the rows are called in the specification, where that is another word. */
    private static final Map<String, String> CALLED = Map.of(
            "hogget",
            "carcass",
            "bones",
            "femur and patella",
            "saw",
            "saw and drip",
            "trim",
            "rest",
            "balance",
            "rest");

    private static Map<String, Double> sheet() {
        Map<String, Double> sheet = new LinkedHashMap<>();
        Matcher row = ROW.matcher(Documents.text(PAGE));
        while (row.find()) {
            String name = CALLED.getOrDefault(row.group(2), row.group(2));
            sheet.put((row.group(1).isBlank() ? "" : "leg / ") + name, Double.valueOf(row.group(3)));
        }
        return sheet;
    }

    private static ExpectedYields yields() {
        String text = Documents.blocks(PAGE).stream()
                .filter(block -> block.kind().equals("cuts"))
                .findFirst()
                .orElseThrow()
                .text();
        CutTree tree = new SpecCompiler()
                .compile(new SourceText("sheet.cuts", text), Sources.none())
                .orElseThrow()
                .tree();
        return Yields.of(tree)
                .forCarcass(new CarcassWeight(Quantity.of("22.00", Unit.KILOGRAM), Basis.COLD))
                .orElseThrow();
    }

    @Test
    void every_row_of_the_sheet_comes_back() {
        Map<String, Double> sheet = sheet();
        List<YieldRow> rows = yields().rows().stream()
                .filter(row -> row.kind() != Kind.TRIMMED)
                .toList();
        assertEquals(
                rows.stream().map(row -> row.path().toString()).sorted().toList(),
                sheet.keySet().stream().sorted().toList());
        for (YieldRow row : rows) {
            assertEquals(
                    sheet.get(row.path().toString()),
                    row.allPieces().orElseThrow().mean(),
                    ROUNDING,
                    row.name());
        }
    }
}
