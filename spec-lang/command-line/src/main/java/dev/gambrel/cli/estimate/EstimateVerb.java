package dev.gambrel.cli.estimate;

import dev.gambrel.cli.argument.FileArgument;
import dev.gambrel.cli.argument.MeasureArgument;
import dev.gambrel.cli.argument.WeightArgument;
import dev.gambrel.cli.file.SpecFileReader;
import dev.gambrel.cli.terminal.Cautions;
import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.FindingsPrinter;
import dev.gambrel.cli.terminal.Terminal;
import dev.gambrel.cli.verb.Verb;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.estimate.Estimator;
import dev.gambrel.yields.estimate.Measurements;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.ParseResult;

/** Works out the estimates of a specification for what was measured. */
public final class EstimateVerb implements Verb {
    /** What it is called on the command line. */
    public static final String NAME = "estimate";

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public CommandSpec spec() {
        CommandSpec spec = CommandSpec.create();
        spec.usageMessage()
                .description("Say what the equations of a specification estimate, and what they need to be measured.")
                .footer(
                        "",
                        "Example: gambrel estimate pork.cuts --weight \"82 kg warm\" --measure \"back fat = 12 mm\"");
        spec.addOption(WeightArgument.option("The carcass weight with its unit and basis, such as \"180 lb warm\"."));
        spec.addOption(MeasureArgument.option());
        spec.addPositional(FileArgument.one("The specification (.cuts), or a tree (.json)."));
        return spec;
    }

    @Override
    public ExitStatus run(ParseResult parsed, Terminal terminal) {
        Measurements given = measurements(parsed);
        Result<SpecFileReader.Read> read = SpecFileReader.read(FileArgument.file(parsed));
        List<Diagnostic> findings = new ArrayList<>(read.diagnostics());
        Optional<CutTree> tree = read.value().map(SpecFileReader.Read::tree);
        tree.ifPresent(spec -> findings.addAll(Estimator.of(spec).check(given)));
        boolean sound = tree.isPresent() && !Result.hasError(findings);
        EstimateReport report = sound ? EstimateReport.of(tree.get(), given) : EstimateReport.NONE;
        findings.addAll(report.findings());
        List<Diagnostic> each = findings.stream().distinct().toList();
        FindingsPrinter.print(each, terminal.err(), terminal.colour(), false);
        if (sound) {
            terminal.out().print(report.text() + "\n" + Cautions.TEXT);
        }
        return ExitStatus.of(each);
    }

    private static Measurements measurements(ParseResult parsed) {
        Measurements given = MeasureArgument.measurements(parsed);
        return WeightArgument.weight(parsed)
                .map(weight -> given.weighed(weight.basis(), weight.mass()))
                .orElse(given);
    }
}
