package dev.gambrel.cli.shares;

import dev.gambrel.batches.sheets.SheetReport;
import dev.gambrel.batches.sheets.SheetsTaken;
import dev.gambrel.batches.sheets.WeighSheet;
import dev.gambrel.cli.argument.FileArgument;
import dev.gambrel.cli.argument.FormArgument;
import dev.gambrel.cli.argument.WorkArgument;
import dev.gambrel.cli.file.SpecFileReader;
import dev.gambrel.cli.shares.report.SharesReport;
import dev.gambrel.cli.terminal.Cautions;
import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.FindingsPrinter;
import dev.gambrel.cli.terminal.Terminal;
import dev.gambrel.cli.verb.Verb;
import dev.gambrel.compiler.source.FolderSources;
import dev.gambrel.compiler.source.Found;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.limits.Limits;
import dev.gambrel.yields.testedcuts.Mean;
import dev.gambrel.yields.testedcuts.Prior;
import dev.gambrel.yields.working.Working;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** Tells a house its own shares from its cutting tests, and proposes them for its specification. */
public final class SharesVerb implements Verb {
    /** What it is called on the command line. */
    public static final String NAME = "shares";

    private static final String SHEET = "--sheet";

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public CommandSpec spec() {
        CommandSpec spec = CommandSpec.create();
        spec.addOption(OptionSpec.builder(SHEET)
                .paramLabel("FILE")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .arity("1..*")
                .required(true)
                .description("The weigh sheets of cutting tests, as CSV.")
                .build());
        WorkArgument.options().forEach(spec::addOption);
        spec.addOption(FormArgument.TEXT_OR_JSON.option());
        spec.addPositional(FileArgument.one("The specification (.cuts), or a tree (.json)."));
        return spec;
    }

    @Override
    public ExitStatus run(ParseResult parsed, Terminal terminal) {
        Working working = WorkArgument.working(parsed);
        List<String> files = parsed.matchedOptionValue(SHEET, List.of());
        Result<SpecFileReader.Read> spec = SpecFileReader.read(FileArgument.file(parsed));
        List<Diagnostic> findings = new ArrayList<>(spec.diagnostics());
        List<SheetReport> reports = new ArrayList<>();
        spec.value().ifPresent(read -> {
            for (String file : files) {
                Result<WeighSheet> sheet = sheet(file, FileArgument.path(file), read, working);
                findings.addAll(sheet.diagnostics());
                sheet.value().map(SheetReport::of).ifPresent(reports::add);
            }
            SheetsTaken taken = SheetsTaken.of(reports, false);
            findings.addAll(taken.findings());
            FindingsPrinter.print(findings, terminal.err(), terminal.colour(), false);
            terminal.out()
                    .print(SharesText.of(SharesReport.of(read.tree(), taken, Mean.SUMS, new Prior.None()))
                            + Cautions.TEXT);
        });
        return ExitStatus.of(findings);
    }

    private static Result<WeighSheet> sheet(String file, Path path, SpecFileReader.Read spec, Working working) {
        Found found = FolderSources.read(path, String.valueOf(path.getFileName()), Limits.DEFAULT);
        return found instanceof Found.Text text
                ? WeighSheet.read(text.text(), spec.tree(), working)
                : Result.failed(List.of(((Found.Refused) found).finding(file, Limits.DEFAULT)));
    }
}
