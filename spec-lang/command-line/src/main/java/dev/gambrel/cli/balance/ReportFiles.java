package dev.gambrel.cli.balance;

import dev.gambrel.batches.sheets.SheetReport;
import dev.gambrel.cli.file.AskedFile;
import dev.gambrel.cli.terminal.Cautions;
import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.Terminal;
import dev.gambrel.reports.page.CuttingTestPage;
import java.nio.charset.StandardCharsets;
import java.util.List;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** The page that is asked for beside what is printed. */
record ReportFiles(List<AskedFile> pages) {
    private static final String HTML = "--html";

    static List<OptionSpec> options() {
        return List.of(AskedFile.option(
                HTML, "Also write all of it to this file (.html) as a page to be looked at and printed."));
    }

    static ReportFiles of(ParseResult parsed, List<String> read) {
        return new ReportFiles(
                AskedFile.of(AskedFile.Kind.PAGE, HTML, parsed, read).stream().toList());
    }

    ExitStatus write(List<SheetReport> reports, Terminal terminal) {
        ExitStatus status = ExitStatus.FINE;
        for (AskedFile page : pages) {
            String text = CuttingTestPage.of(reports, Cautions.TEXT.lines().toList());
            status = status.and(page.write(text.getBytes(StandardCharsets.UTF_8), "The page", terminal));
        }
        return status;
    }
}
