package dev.gambrel.examples;

import dev.gambrel.batches.sheets.SheetOrder;
import dev.gambrel.batches.sheets.SheetReport;
import dev.gambrel.batches.sheets.SheetsTaken;
import dev.gambrel.batches.sheets.WeighSheet;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.reports.page.DriftPage;
import dev.gambrel.text.SourceText;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.drift.Baseline;
import dev.gambrel.yields.drift.Drift;
import dev.gambrel.yields.drift.DriftSentences;
import dev.gambrel.yields.working.Working;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;

/** What moved from cutting test to cutting test, as sentences and as a page with charts. */
public final class WhatMoved {
    private WhatMoved() {}

    /**
     * Prints what moved and writes the page.
     *
     * @param args the specification, the page to be written, then the weigh sheets
     * @throws IOException if a file cannot be read or written
     */
    public static void main(String[] args) throws IOException {
        CutTree tree =
                new SpecCompiler().compile(Path.of(args[0])).orElseThrow().tree();
        List<SheetReport> sheets = new ArrayList<>();
        for (String file : List.of(args).subList(2, args.length)) {
            Path path = Path.of(file);
            SourceText text = new SourceText(String.valueOf(path.getFileName()), Files.readString(path));
            sheets.add(SheetReport.of(
                    WeighSheet.read(text, tree, Working.AS_WRITTEN).orElseThrow()));
        }
        SheetOrder order = SheetOrder.of(SheetsTaken.of(sheets, false).reports());
        Drift drift = Drift.of(order.tests(), new Baseline.AllTests());
        new DriftSentences(drift).ofAllCharts().forEach(System.out::println);
        List<String> about = List.of(drift.tests().size() + " of " + sheets.size() + " sheets");
        Files.writeString(
                Path.of(args[1]), DriftPage.of("Hogget, what moved", about, drift, List.of("Keep meat cold.")));
    }
}
