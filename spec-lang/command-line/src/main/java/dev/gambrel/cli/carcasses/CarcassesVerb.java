package dev.gambrel.cli.carcasses;

import dev.gambrel.batches.Batch;
import dev.gambrel.batches.BatchOrder;
import dev.gambrel.batches.BatchResult;
import dev.gambrel.batches.SumsTable;
import dev.gambrel.cli.argument.DecimalsArgument;
import dev.gambrel.cli.argument.FileArgument;
import dev.gambrel.cli.argument.FormArgument.Form;
import dev.gambrel.cli.argument.UnitArgument;
import dev.gambrel.cli.argument.WorkArgument;
import dev.gambrel.cli.file.SpecFileReader;
import dev.gambrel.cli.json.BatchJson;
import dev.gambrel.cli.terminal.Cautions;
import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.FindingsPrinter;
import dev.gambrel.cli.terminal.Terminal;
import dev.gambrel.cli.verb.Verb;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.diagnostic.Visible;
import java.io.IOException;
import java.io.PrintStream;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Says what a file of carcasses should give. */
public final class CarcassesVerb implements Verb {
    /** What it is called on the command line. */
    public static final String NAME = "carcasses";

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public CommandSpec spec() {
        CommandSpec spec = CommandSpec.create();
        spec.usageMessage()
                .description("Say what many carcasses should give, one to a row of a CSV file.")
                .footer(
                        "",
                        "The first row names the columns: the carcass weight with basis and unit, such as",
                        "\"cold weight (kg)\", and by their names the grades and measures of the specification.",
                        "",
                        "Example: gambrel carcasses hogget.cuts --from kills.csv --to yields.csv --carry tag");
        CarcassOptions.all().forEach(spec::addOption);
        WorkArgument.options().forEach(spec::addOption);
        spec.addOption(UnitArgument.option());
        spec.addOption(DecimalsArgument.option());
        spec.addPositional(FileArgument.one("The specification (.cuts), or a tree (.json)."));
        return spec;
    }

    @Override
    public ExitStatus run(ParseResult parsed, Terminal terminal) {
        CarcassOptions options = CarcassOptions.of(parsed);
        Form form = options.form();
        BatchOrder order = options.order(UnitArgument.unit(parsed), DecimalsArgument.decimals(parsed));
        Result<SpecFileReader.Read> read = SpecFileReader.read(FileArgument.file(parsed));
        List<Diagnostic> findings = new ArrayList<>(read.diagnostics());
        if (read.value().isEmpty()) {
            FindingsPrinter.print(findings, terminal.err(), terminal.colour(), false);
            return ExitStatus.of(findings);
        }
        try (CarcassFiles files = CarcassFiles.open(options, FileArgument.file(parsed), terminal)) {
            Result<BatchResult> result =
                    Batch.run(read.value().get().tree(), WorkArgument.working(parsed), order, files.files());
            files.clear();
            result.value()
                    .ifPresentOrElse(r -> findings.addAll(r.shown()), () -> findings.addAll(result.diagnostics()));
            FindingsPrinter.print(findings, terminal.err(), terminal.colour(), false);
            if (result.value().isEmpty()) {
                return ExitStatus.of(findings);
            }
            files.finish();
            print(
                    result.value().get(),
                    form,
                    order,
                    options.isWrittenOut() ? terminal.err() : terminal.out(),
                    terminal);
            return result.value().get().refused() > 0 ? ExitStatus.FINDINGS : ExitStatus.FINE;
        } catch (IOException cannot) {
            terminal.err()
                    .println("The carcasses cannot be read, or what they give cannot be written: "
                            + Visible.text(String.valueOf(cannot.getMessage())));
            terminal.err().println("→ Look at how the files are named, and who may read and write them.");
            return ExitStatus.COULD_NOT;
        }
    }

    private static void print(BatchResult result, Form form, BatchOrder order, PrintStream figures, Terminal terminal) {
        SumsTable table = new SumsTable(result.plan(), result.sums(), order.printed());
        switch (form) {
            case TEXT -> figures.print(text(result, table));
            case CSV -> {
                figures.print(table.csv());
                terminal.err().print(BatchReport.of(result));
            }
            case JSON -> {
                figures.print(BatchJson.write(result, order.printed().unit()));
                terminal.err().print(BatchReport.of(result));
            }
        }
    }

    /** Where no row could be read there are no figures, and none are shown as 0. */
    private static String text(BatchResult result, SumsTable table) {
        return result.sums().carcasses() == 0
                ? "No carcass could be worked out.\n\n" + BatchReport.of(result)
                : BatchReport.heading(result) + table.text() + "\n" + BatchReport.below(result) + "\n" + Cautions.TEXT;
    }
}
