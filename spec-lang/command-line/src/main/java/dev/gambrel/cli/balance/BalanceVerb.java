package dev.gambrel.cli.balance;

import dev.gambrel.batches.sheets.PriceList;
import dev.gambrel.batches.sheets.SheetReport;
import dev.gambrel.cli.argument.FileArgument;
import dev.gambrel.cli.argument.FormArgument;
import dev.gambrel.cli.argument.FormArgument.Form;
import dev.gambrel.cli.argument.PricesArgument;
import dev.gambrel.cli.argument.SheetsArgument;
import dev.gambrel.cli.argument.WorkArgument;
import dev.gambrel.cli.file.SpecFileReader;
import dev.gambrel.cli.json.BalanceJson;
import dev.gambrel.cli.terminal.Cautions;
import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.FindingsPrinter;
import dev.gambrel.cli.terminal.Terminal;
import dev.gambrel.cli.verb.Verb;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.cuttingtest.Verdict;
import dev.gambrel.yields.plan.YieldPlan;
import dev.gambrel.yields.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Says whether the weigh sheets of cutting tests add up, and how they compare with what was expected. */
public final class BalanceVerb implements Verb {
    /** What it is called on the command line. */
    public static final String NAME = "balance";

    private static final String NOTES = """
            z is the difference in standard deviations. Parts are compared with what a carcass of the weight on the sheet should give;
            a loss that nobody weighed counts as the specification expects it, with its spread. By meat all cuts as they were
            weighed are meant, with any bone in them; by trim all that was taken off or out, risk material too.
            Shown weights in balance add up to what they are cut from, where it went to the carcass, and worth to the whole, by the largest
            remainder; every other figure is rounded on its own.

            """;

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public CommandSpec spec() {
        CommandSpec spec = CommandSpec.create();
        spec.usageMessage()
                .description("Say whether what was weighed of a carcass adds up, and whether it gave what it should.")
                .footer(
                        "",
                        "A sheet has a heading (specification, revision, date, lot, scale, cutter, carcass), then a row",
                        "for each part: part,pieces,gross,tare,unit. In JSON it is one object of the same words, with",
                        "\"scales\" and \"parts\" as lists: see examples/weigh-sheets/hogget-01.json.",
                        "",
                        "Example: gambrel balance hogget.cuts --sheet monday.csv tuesday.json",
                        "It ends with 1 where a sheet does not balance, or nothing checks it.");
        spec.addOption(SheetsArgument.option());
        spec.addOption(PricesArgument.option());
        WorkArgument.options().forEach(spec::addOption);
        spec.addOption(FormArgument.TEXT_OR_JSON.option());
        ReportFiles.options().forEach(spec::addOption);
        spec.addPositional(FileArgument.one("The specification (.cuts), or a tree (.json)."));
        return spec;
    }

    @Override
    public ExitStatus run(ParseResult parsed, Terminal terminal) {
        boolean asJson = FormArgument.TEXT_OR_JSON.form(parsed) == Form.JSON;
        Working working = WorkArgument.working(parsed);
        SheetsArgument.Files sheets = SheetsArgument.files(parsed);
        Optional<PricesArgument.File> priced = PricesArgument.file(parsed);
        ReportFiles asked = ReportFiles.of(
                parsed,
                Stream.of(
                                Stream.of(FileArgument.file(parsed)),
                                sheets.names().stream(),
                                priced.stream().map(PricesArgument.File::name))
                        .flatMap(names -> names)
                        .toList(),
                sheets.names().size());
        Result<SpecFileReader.Read> spec = SpecFileReader.read(FileArgument.file(parsed));
        List<Diagnostic> findings = new ArrayList<>(spec.diagnostics());
        List<SheetReport> reports = new ArrayList<>();
        spec.value().ifPresent(read -> reports.addAll(sheets.read(read.tree(), working, findings::add)));
        PriceList prices = priced.flatMap(
                        file -> plan(reports, spec, working).map(plan -> file.read(plan, findings::add)))
                .orElse(PriceList.NONE);
        FindingsPrinter.print(findings, terminal.err(), terminal.colour(), false);
        ExitStatus written = ExitStatus.FINE;
        if (!reports.isEmpty()) {
            terminal.out().print(asJson ? BalanceJson.write(reports, prices) : text(reports, prices));
            written = Result.hasError(findings) ? asked.refuse(terminal) : asked.write(reports, terminal);
        }
        boolean allBalance = reports.stream().allMatch(report -> report.faults().verdict() == Verdict.BALANCES);
        ExitStatus found = ExitStatus.of(findings).and(written);
        return allBalance ? found : found.and(ExitStatus.FINDINGS);
    }

    /** Prices are of the parts that the sheets have; where no sheet could be read, of those of a typical carcass. */
    private static Optional<YieldPlan> plan(
            List<SheetReport> reports, Result<SpecFileReader.Read> spec, Working working) {
        return reports.stream()
                .map(report -> report.test().plan())
                .findFirst()
                .or(() -> spec.value()
                        .map(read -> Yields.of(read.tree(), working))
                        .flatMap(yields -> yields.forTypicalCarcass().value())
                        .map(ExpectedYields::plan));
    }

    private static String text(List<SheetReport> reports, PriceList prices) {
        StringBuilder out = new StringBuilder();
        reports.forEach(report -> out.append(BalanceText.of(report, prices)));
        return out + NOTES + Cautions.TEXT;
    }
}
