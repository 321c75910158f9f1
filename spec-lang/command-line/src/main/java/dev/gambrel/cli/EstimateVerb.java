package dev.gambrel.cli;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.CarcassWeight;
import dev.gambrel.yields.estimate.Estimator;
import dev.gambrel.yields.estimate.Measurements;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** Works out the estimates of a specification for what was measured. */
final class EstimateVerb implements Verb {
    static final String NAME = "estimate";

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
        spec.addOption(OptionSpec.builder("--weight")
                .paramLabel("WEIGHT")
                .type(String.class)
                .description("The carcass weight with its unit and basis, such as \"180 lb warm\".")
                .build());
        spec.addOption(MeasureArgument.OPTION);
        spec.addPositional(PositionalParamSpec.builder()
                .paramLabel("FILE")
                .arity("1")
                .required(true)
                .type(String.class)
                .description("The specification (.cuts), or a tree (.json).")
                .build());
        return spec;
    }

    @Override
    public ExitStatus run(ParseResult parsed, Terminal terminal) {
        Measurements given = measurements(parsed);
        Result<SpecFileReader.Read> read = SpecFileReader.read(parsed.matchedPositionalValue(0, ""));
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
        if (!parsed.hasMatchedOption("--weight")) {
            return given;
        }
        CarcassWeight weight = WeightArgument.parse(parsed.matchedOptionValue("--weight", ""));
        return given.weighed(weight.basis(), weight.mass());
    }
}
