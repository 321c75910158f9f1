package dev.gambrel.cli.drift;

import dev.gambrel.batches.sheets.SheetReport;
import dev.gambrel.batches.sheets.SheetsTaken;
import dev.gambrel.cli.argument.FileArgument;
import dev.gambrel.cli.argument.FormArgument;
import dev.gambrel.cli.argument.FormArgument.Form;
import dev.gambrel.cli.argument.SheetsArgument;
import dev.gambrel.cli.argument.WorkArgument;
import dev.gambrel.cli.file.SpecFileReader;
import dev.gambrel.cli.json.DriftJson;
import dev.gambrel.cli.terminal.Cautions;
import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.FindingsPrinter;
import dev.gambrel.cli.terminal.Terminal;
import dev.gambrel.cli.verb.Verb;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.diagnostic.Visible;
import dev.gambrel.yields.drift.Baseline;
import dev.gambrel.yields.drift.Drift;
import dev.gambrel.yields.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Says what moved from cutting test to cutting test. */
public final class DriftVerb implements Verb {
    /** What it is called on the command line. */
    public static final String NAME = "drift";

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public CommandSpec spec() {
        CommandSpec spec = CommandSpec.create();
        spec.usageMessage()
                .description("Say what moved from cutting test to cutting test: each share, each cut as a whole,"
                        + " and by cutter, lot and scale.")
                .footer(
                        "",
                        "Sheets that do not balance are left out. The others are put in the order of their dates.",
                        "",
                        "Example: gambrel drift hogget.cuts --sheet monday.csv tuesday.csv",
                        "It ends with 1 where something moved by more than chance explains, or a sheet was left out.");
        spec.addOption(SheetsArgument.option());
        spec.addOption(SheetsArgument.unbalancedOption());
        spec.addOption(FirstArgument.option());
        WorkArgument.options().forEach(spec::addOption);
        spec.addOption(FormArgument.TEXT_OR_JSON.option());
        DriftFiles.options().forEach(spec::addOption);
        spec.addPositional(FileArgument.one("The specification (.cuts), or a tree (.json)."));
        return spec;
    }

    @Override
    public ExitStatus run(ParseResult parsed, Terminal terminal) {
        boolean asJson = FormArgument.TEXT_OR_JSON.form(parsed) == Form.JSON;
        Working working = WorkArgument.working(parsed);
        Baseline baseline = FirstArgument.baseline(parsed);
        SheetsArgument.Files files = SheetsArgument.files(parsed);
        DriftFiles asked = DriftFiles.of(
                parsed,
                Stream.concat(Stream.of(FileArgument.file(parsed)), files.names().stream())
                        .toList());
        Result<SpecFileReader.Read> spec = SpecFileReader.read(FileArgument.file(parsed));
        List<Diagnostic> findings = new ArrayList<>(spec.diagnostics());
        List<SheetReport> reports = new ArrayList<>();
        spec.value().ifPresent(read -> reports.addAll(files.read(read.tree(), working, findings::add)));
        SheetsTaken taken = SheetsTaken.of(reports, SheetsArgument.evenUnbalanced(parsed));
        findings.addAll(taken.findings());
        FindingsPrinter.print(findings, terminal.err(), terminal.colour(), false);
        ChartedSheets sheets = ChartedSheets.of(reports, taken);
        if (taken.reports().isEmpty()) {
            return nothing(sheets, findings, terminal);
        }
        Drift drift = Drift.of(sheets.order().tests(), baseline);
        List<String> about = sheets.about(baseline);
        String title = "What moved: "
                + Visible.text(spec.orElseThrow().tree().specification().title());
        ExitStatus written =
                Result.hasError(findings) ? asked.refuse(terminal) : asked.write(title, about, drift, terminal);
        terminal.out().print(asJson ? DriftJson.write(drift) : DriftText.of(about, drift) + Cautions.TEXT);
        boolean isQuiet = sheets.leftOut().isEmpty() && drift.isQuiet();
        ExitStatus found = ExitStatus.of(findings).and(written);
        return isQuiet ? found : found.and(ExitStatus.FINDINGS);
    }

    private static ExitStatus nothing(ChartedSheets sheets, List<Diagnostic> findings, Terminal terminal) {
        if (sheets.leftOut().isEmpty()) {
            return ExitStatus.of(findings);
        }
        terminal.out().print("No sheet balances, so none is charted. “gambrel balance” says why.\n");
        return ExitStatus.of(findings).and(ExitStatus.FINDINGS);
    }
}
