package dev.gambrel.examples;

import dev.gambrel.batches.sheets.SheetReport;
import dev.gambrel.batches.sheets.SheetsTaken;
import dev.gambrel.batches.sheets.WeighSheet;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.SourceText;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.testedcuts.FoundShare;
import dev.gambrel.yields.testedcuts.FoundShares;
import dev.gambrel.yields.testedcuts.Mean;
import dev.gambrel.yields.testedcuts.Prior;
import dev.gambrel.yields.testedcuts.TestedCut;
import dev.gambrel.yields.testedcuts.TestedCuts;
import dev.gambrel.yields.working.Working;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** What a house's cutting tests say of the carcass, beside what its specification states. */
public final class HousesOwnShares {
    private HousesOwnShares() {}

    /**
     * Prints which sheets are left out, and the share of each part of the carcass.
     *
     * @param args the specification, then its weigh sheets
     * @throws IOException if a sheet cannot be read
     */
    public static void main(String[] args) throws IOException {
        CutTree tree =
                new SpecCompiler().compile(Path.of(args[0])).orElseThrow().tree();
        List<SheetReport> sheets = new ArrayList<>();
        for (String file : List.of(args).subList(1, args.length)) {
            Path path = Path.of(file);
            SourceText text = new SourceText(String.valueOf(path.getFileName()), Files.readString(path));
            sheets.add(SheetReport.of(
                    WeighSheet.read(text, tree, Working.AS_WRITTEN).orElseThrow()));
        }
        SheetsTaken taken = SheetsTaken.of(sheets, false);
        taken.findings().forEach(finding -> System.out.println(finding.message()));
        for (TestedCut cut : TestedCuts.of(tree, taken.tests()).cuts()) {
            if (cut instanceof TestedCut.Found found && found.path().equals(TreePath.ROOT)) {
                FoundShares.of(found, Mean.SUMS, new Prior.None()).shares().forEach(HousesOwnShares::print);
            }
        }
    }

    private static void print(FoundShare share) {
        String range = share.straying() instanceof FoundShare.Told told
                ? String.format(
                        Locale.ROOT,
                        "%.2f to %.2f %%",
                        100 * told.mean95().low(),
                        100 * told.mean95().high())
                : "not told by one test";
        System.out.printf(
                Locale.ROOT,
                "%s: %.1f %% stated, %.2f %% found, true mean %s%n",
                share.part().name(),
                100 * share.part().stated().mean(),
                100 * share.share(),
                range);
    }
}
