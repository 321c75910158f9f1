package dev.gambrel.cli.compare;

import dev.gambrel.cli.argument.DecimalsArgument;
import dev.gambrel.cli.argument.FormArgument;
import dev.gambrel.cli.argument.FormArgument.Form;
import dev.gambrel.cli.argument.MeasureArgument;
import dev.gambrel.cli.argument.UnitArgument;
import dev.gambrel.cli.argument.WeightArgument;
import dev.gambrel.cli.argument.WorkArgument;
import dev.gambrel.cli.compare.report.ComparedFile;
import dev.gambrel.cli.compare.report.ComparisonReport;
import dev.gambrel.cli.json.ComparisonJson;
import dev.gambrel.cli.terminal.Cautions;
import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.FindingsPrinter;
import dev.gambrel.cli.terminal.Terminal;
import dev.gambrel.cli.verb.Verb;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.quantity.Unit;
import dev.gambrel.yields.comparison.Comparison;
import dev.gambrel.yields.comparison.Effect;
import java.util.ArrayList;
import java.util.List;
import java.util.Set;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** {@code gambrel compare OLD NEW}. */
public final class CompareVerb implements Verb {
    /** What it is called. */
    public static final String NAME = "compare";

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public CommandSpec spec() {
        CommandSpec spec = CommandSpec.create();
        spec.usageMessage()
                .description(
                        "Say what differs in meaning between two specifications, and what that does: breaks, tightens,"
                                + " loosens, alters figures or only rewords.")
                .footer(
                        "",
                        "Exit status: 0 nothing differs but words, or only in what --accept names; 1 something differs.",
                        "",
                        "Example: gambrel compare hogget.cuts hogget-harbour-table.cuts --accept \"loosens, adds\"");
        spec.addOption(AcceptArgument.option());
        spec.addOption(WeightArgument.option("The carcass that is worked out by both, such as \"22 kg cold\";"
                + " without it, the middle of what their bands have in common."));
        WorkArgument.options().forEach(spec::addOption);
        spec.addOption(MeasureArgument.option());
        spec.addOption(UnitArgument.option());
        spec.addOption(DecimalsArgument.option());
        spec.addOption(FormArgument.TEXT_OR_JSON.option());
        spec.addOption(OptionSpec.builder("--all")
                .description("Print all differences, not only the first 50 of each effect.")
                .build());
        spec.addPositional(file("OLD", 0, "The earlier specification (.cuts), or a tree (.json)."));
        spec.addPositional(file("NEW", 1, "The later one."));
        return spec;
    }

    private static PositionalParamSpec file(String label, int index, String description) {
        return PositionalParamSpec.builder()
                .paramLabel(label)
                .index(Integer.toString(index))
                .arity("1")
                .required(true)
                .type(String.class)
                .description(description)
                .build();
    }

    @Override
    public ExitStatus run(ParseResult parsed, Terminal terminal) {
        Form form = FormArgument.TEXT_OR_JSON.form(parsed);
        Unit unit = UnitArgument.unit(parsed);
        int decimals = DecimalsArgument.decimals(parsed);
        Set<Effect> accepted = AcceptArgument.accepted(parsed);
        List<Diagnostic> findings = new ArrayList<>();
        CarcassByBoth carcass = new CarcassByBoth(
                WeightArgument.weight(parsed).stream().toList(),
                WorkArgument.working(parsed),
                MeasureArgument.measurements(parsed),
                findings);
        Result<ComparedFile> before = ComparedFile.read(parsed.matchedPositionalValue(0, ""));
        Result<ComparedFile> after = ComparedFile.read(parsed.matchedPositionalValue(1, ""));
        FindingsPrinter.print(before.diagnostics(), terminal.err(), terminal.colour(), false);
        FindingsPrinter.print(after.diagnostics(), terminal.err(), terminal.colour(), false);
        if (before.value().isEmpty() || after.value().isEmpty()) {
            return ExitStatus.of(before.diagnostics()).and(ExitStatus.of(after.diagnostics()));
        }
        ComparisonReport report = report(before.value().get(), after.value().get(), carcass);
        FindingsPrinter.print(findings, terminal.err(), terminal.colour(), false);
        terminal.out()
                .print(
                        form == Form.JSON
                                ? ComparisonJson.write(report)
                                : new CompareText(report, unit, decimals, parsed.hasMatchedOption("--all")).text()
                                        + "\n" + Cautions.TEXT);
        boolean fine = report.comparison().changes().stream().allMatch(change -> accepted.contains(change.effect()));
        return fine ? ExitStatus.FINE : ExitStatus.FINDINGS;
    }

    private static ComparisonReport report(ComparedFile before, ComparedFile after, CarcassByBoth carcass) {
        return new ComparisonReport(
                before, after, Comparison.of(before.tree(), after.tree()), carcass.of(before, after));
    }
}
