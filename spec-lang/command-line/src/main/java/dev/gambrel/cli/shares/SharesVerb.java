package dev.gambrel.cli.shares;

import dev.gambrel.batches.sheets.SharesCode;
import dev.gambrel.batches.sheets.SheetReport;
import dev.gambrel.batches.sheets.SheetsTaken;
import dev.gambrel.cli.argument.FileArgument;
import dev.gambrel.cli.argument.FormArgument;
import dev.gambrel.cli.argument.FormArgument.Form;
import dev.gambrel.cli.argument.SheetsArgument;
import dev.gambrel.cli.argument.WorkArgument;
import dev.gambrel.cli.json.SharesJson;
import dev.gambrel.cli.shares.report.Proposed;
import dev.gambrel.cli.shares.report.SharesReport;
import dev.gambrel.cli.terminal.Cautions;
import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.FindingsPrinter;
import dev.gambrel.cli.terminal.Terminal;
import dev.gambrel.cli.verb.Verb;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.tree.CutTree;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Tells a house its own shares from its cutting tests, and proposes them for its specification. */
public final class SharesVerb implements Verb {
    /** What it is called on the command line. */
    public static final String NAME = "shares";

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public CommandSpec spec() {
        CommandSpec spec = CommandSpec.create();
        spec.usageMessage()
                .description(
                        "Say what shares of each cut the cutting tests of a house give, how far carcasses stray, and how far"
                                + " the figures may be off; and propose them for the specification.")
                .footer(
                        "",
                        "Example: gambrel shares hogget.cuts --sheet monday.csv tuesday.csv wednesday.csv",
                        "The proposed lines are a patch: patch -p0 or git apply -p0 in the folder of the",
                        "specification takes it, and --apply writes the specification itself. Only figures change,",
                        "and the sources that their lines cite. One test alone proposes nothing.");
        spec.addOption(SheetsArgument.option());
        spec.addOption(SheetsArgument.unbalancedOption());
        SharesArguments.options().forEach(spec::addOption);
        PatchFiles.options().forEach(spec::addOption);
        WorkArgument.options().forEach(spec::addOption);
        spec.addOption(FormArgument.TEXT_OR_JSON.option());
        spec.addPositional(FileArgument.one("The specification (.cuts), or a tree (.json)."));
        return spec;
    }

    @Override
    public ExitStatus run(ParseResult parsed, Terminal terminal) {
        String file = FileArgument.file(parsed);
        SheetsArgument.Files sheets = SheetsArgument.files(parsed);
        PatchFiles files = PatchFiles.of(parsed, file, sheets.names());
        boolean asJson = FormArgument.TEXT_OR_JSON.form(parsed) == Form.JSON;
        List<Diagnostic> findings = new ArrayList<>();
        Optional<SharesReport> report = Optional.empty();
        Proposed proposed = Proposed.NOTHING;
        Result<SpecAsWritten> spec = SpecAsWritten.read(file);
        findings.addAll(spec.diagnostics());
        if (spec.value().isPresent()) {
            SpecAsWritten written = spec.value().get();
            report = report(written.tree(), parsed, sheets, file, findings);
            proposed = report.flatMap(found -> proposed(found, written, parsed, findings))
                    .orElse(proposed);
        }
        FindingsPrinter.print(findings, terminal.err(), terminal.colour(), false);
        if (report.isEmpty()) {
            return ExitStatus.of(findings);
        }
        terminal.out()
                .print(
                        asJson
                                ? SharesJson.write(report.get(), proposed)
                                : SharesText.of(report.get())
                                        + ProposedText.of(report.get(), proposed, files.isPrinted())
                                        + Cautions.TEXT);
        if (Result.hasError(findings)) {
            files.refuse(terminal);
            return ExitStatus.of(findings);
        }
        return files.write(file, proposed.texts(), terminal);
    }

    private static Optional<SharesReport> report(
            CutTree tree, ParseResult parsed, SheetsArgument.Files files, String spec, List<Diagnostic> findings) {
        List<SheetReport> sheets = files.read(tree, WorkArgument.working(parsed), findings::add);
        SheetsTaken taken = SheetsTaken.of(sheets, SheetsArgument.evenUnbalanced(parsed));
        findings.addAll(taken.findings());
        if (taken.sheets().isEmpty()) {
            return Optional.empty();
        }
        SharesReport report = SharesReport.of(tree, taken, SharesArguments.mean(parsed), SharesArguments.prior(parsed));
        if (report.found().isEmpty()) {
            findings.add(Diagnostic.of(SharesCode.NO_CUT_TESTED, new Place.InFile(spec))
                    .help("Weigh every part of a cut but its losses."));
        }
        return Optional.of(report);
    }

    /** A tree from JSON has no lines. */
    private static Optional<Proposed> proposed(
            SharesReport report, SpecAsWritten spec, ParseResult parsed, List<Diagnostic> findings) {
        if (!(spec instanceof SpecAsWritten.Lines lines)) {
            return Optional.empty();
        }
        Result<Proposed> proposed =
                Proposals.of(report, lines.compilation(), lines.sources(), SharesArguments.places(parsed));
        findings.addAll(proposed.diagnostics());
        return proposed.value();
    }
}
