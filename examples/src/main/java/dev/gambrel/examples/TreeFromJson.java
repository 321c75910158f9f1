package dev.gambrel.examples;

import dev.gambrel.diagnostic.PlainReport;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.json.TreeJsonReader;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.table.YieldTable;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;

/** Reads a cut tree that another system sent as JSON, and prints what a typical carcass should give. */
public final class TreeFromJson {
    private static final int MOST_FINDINGS = 50;

    private TreeFromJson() {}

    /**
     * Prints the yields, or what is wrong with the file.
     *
     * @param args one: the JSON file, such as {@code marram/topside.json}
     * @throws IOException if the file cannot be read
     */
    public static void main(String[] args) throws IOException {
        Path file = Path.of(args[0]);
        System.out.print(report(file.getFileName().toString(), Files.readAllBytes(file)));
    }

    static String report(String name, byte[] json) {
        Result<CutTree> read = TreeJsonReader.read(name, json);
        if (read.value().isEmpty()) {
            return findings(read);
        }
        Result<ExpectedYields> yields = Yields.of(read.orElseThrow()).forTypicalCarcass();
        return yields.value()
                .map(found -> YieldTable.of(found, Unit.KILOGRAM, 3).text())
                .orElseGet(() -> findings(yields));
    }

    private static String findings(Result<?> result) {
        return new PlainReport(PlainReport.Paint.NONE).print(result.diagnostics(), MOST_FINDINGS);
    }
}
