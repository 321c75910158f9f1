package dev.gambrel.examples;

import dev.gambrel.batches.sheets.SheetReport;
import dev.gambrel.batches.sheets.WeighSheet;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.reports.page.CuttingTestPage;
import dev.gambrel.reports.picture.CutTreePicture;
import dev.gambrel.reports.png.PngImage;
import dev.gambrel.reports.svg.Picture;
import dev.gambrel.text.SourceText;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.working.Working;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;

/** A cutting test as a page to be printed, and its cut tree as an image. */
public final class CuttingTestReport {
    private CuttingTestReport() {}

    /**
     * Writes {@code report.html} and {@code tree.png}.
     *
     * @param args a specification, a weigh sheet, and a folder to write to
     * @throws IOException if a file cannot be read or written
     */
    public static void main(String[] args) throws IOException {
        CutTree tree =
                new SpecCompiler().compile(Path.of(args[0])).orElseThrow().tree();
        SourceText text = new SourceText("sheet.csv", Files.readString(Path.of(args[1])));
        SheetReport report =
                SheetReport.of(WeighSheet.read(text, tree, Working.AS_WRITTEN).orElseThrow());
        Path folder = Path.of(args[2]);

        String page = CuttingTestPage.of(List.of(report), List.of("Take care: gauntlet on the hand that holds."));
        Files.writeString(folder.resolve("report.html"), page);

        Picture picture = CutTreePicture.of(report).whole();
        byte[] image = PngImage.of(picture, 1360, "tree.png").orElseThrow().bytes();
        Files.write(folder.resolve("tree.png"), image);
        System.out.println(picture.title() + ": " + report.weighed().size() + " parts weighed");
    }
}
