package dev.gambrel.cli.balance;

import dev.gambrel.batches.sheets.SheetReport;
import dev.gambrel.cli.file.AskedFile;
import dev.gambrel.cli.file.PictureFile;
import dev.gambrel.cli.terminal.Cautions;
import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.Terminal;
import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.reports.page.CuttingTestPage;
import dev.gambrel.reports.picture.CutTreePicture;
import dev.gambrel.reports.picture.GramsPicture;
import dev.gambrel.reports.svg.Picture;
import java.nio.charset.StandardCharsets;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** The page and the pictures that are asked for beside what is printed. */
record ReportFiles(List<AskedFile> pages, List<AskedPicture> pictures) {
    private static final String HTML = "--html";
    private static final String TREE = "--tree-picture";
    private static final String GRAMS = "--grams-picture";

    private record AskedPicture(AskedFile file, String what, Function<SheetReport, Picture> draw) {}

    static List<OptionSpec> options() {
        return List.of(
                AskedFile.option(
                        HTML,
                        "Also write the verdict, the pictures and the tables to this file (.html) as a page to be printed; prices are not on it."),
                AskedFile.option(TREE, "Also draw the cut tree of one sheet to this file (.svg or .png)."),
                AskedFile.option(GRAMS, "Also draw where the grams of one sheet went to this file (.svg or .png)."));
    }

    static ReportFiles of(ParseResult parsed, List<String> read, int sheets) {
        List<AskedPicture> pictures = new ArrayList<>();
        AskedFile.of(AskedFile.Kind.PICTURE, TREE, parsed, read)
                .map(file -> new AskedPicture(
                        file,
                        "The picture of the cut tree",
                        report -> CutTreePicture.of(report).whole()))
                .ifPresent(pictures::add);
        AskedFile.of(AskedFile.Kind.PICTURE, GRAMS, parsed, read)
                .map(file -> new AskedPicture(file, "The picture of the grams", GramsPicture::of))
                .ifPresent(pictures::add);
        if (pictures.stream().map(picture -> picture.file().name()).distinct().count() < pictures.size()) {
            throw new WrongUsage("Two pictures would be written to one file; name another for one of them.");
        }
        if (!pictures.isEmpty() && sheets > 1) {
            throw new WrongUsage("A picture shows one sheet, and " + sheets
                    + " are named; name one, or ask for all of them on a page with " + HTML + ".");
        }
        return new ReportFiles(
                AskedFile.of(AskedFile.Kind.PAGE, HTML, parsed, read).stream().toList(), pictures);
    }

    /** With an error among the findings it would not show all that was asked for. */
    ExitStatus refuse(Terminal terminal) {
        if (!pages.isEmpty() || !pictures.isEmpty()) {
            terminal.err().println("No page or picture was written, because of the errors above.");
        }
        return ExitStatus.FINE;
    }

    ExitStatus write(List<SheetReport> reports, Terminal terminal) {
        ExitStatus status = ExitStatus.FINE;
        for (AskedFile page : pages) {
            String text = CuttingTestPage.of(reports, Cautions.TEXT.lines().toList());
            status = status.and(page.write(text.getBytes(StandardCharsets.UTF_8), "The page", terminal));
        }
        for (AskedPicture picture : pictures) {
            status = status.and(
                    PictureFile.write(picture.file(), picture.draw().apply(reports.get(0)), picture.what(), terminal));
        }
        return status;
    }
}
