package dev.gambrel.cli.yield;

import dev.gambrel.cli.argument.CarcassesArgument;
import dev.gambrel.cli.argument.DecimalsArgument;
import dev.gambrel.cli.argument.FileArgument;
import dev.gambrel.cli.argument.FormArgument;
import dev.gambrel.cli.argument.FormArgument.Form;
import dev.gambrel.cli.argument.MeasureArgument;
import dev.gambrel.cli.argument.PairsArgument;
import dev.gambrel.cli.argument.PromiseArgument;
import dev.gambrel.cli.argument.UnitArgument;
import dev.gambrel.cli.argument.WeightArgument;
import dev.gambrel.cli.argument.WorkArgument;
import dev.gambrel.cli.file.SpecFileReader;
import dev.gambrel.cli.file.Summary;
import dev.gambrel.cli.file.TreeFile;
import dev.gambrel.cli.terminal.Cautions;
import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.FindingsPrinter;
import dev.gambrel.cli.terminal.Terminal;
import dev.gambrel.cli.verb.Verb;
import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.quantity.Unit;
import dev.gambrel.yields.Doubt;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.estimate.Measurements;
import dev.gambrel.yields.portions.Promise;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** Says what a carcass should give. */
public final class YieldVerb implements Verb {
    /** What it is called on the command line. */
    public static final String NAME = "yield";

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public CommandSpec spec() {
        CommandSpec spec = CommandSpec.create();
        spec.usageMessage()
                .description("Say what a carcass should give.")
                .footer("", "Example: gambrel yield hogget.cuts --weight \"22.4 kg warm\" --unit kg --decimals 2");
        spec.addOption(WeightArgument.option("The carcass weight with its unit and basis, such as \"47 lb 6 oz cold\";"
                + " without it, the middle of the band."));
        CarcassesArgument.options().forEach(spec::addOption);
        WorkArgument.options().forEach(spec::addOption);
        spec.addOption(PairsArgument.option());
        spec.addOption(MeasureArgument.option());
        spec.addOption(PromiseArgument.option());
        spec.addOption(UnitArgument.option());
        spec.addOption(DecimalsArgument.option());
        spec.addOption(FormArgument.TEXT_CSV_OR_JSON.option());
        option(spec, "--tree", "FILE", "Also write the tree as JSON to this file.");
        spec.addPositional(FileArgument.one("The specification (.cuts), or a tree (.json)."));
        return spec;
    }

    private static void option(CommandSpec spec, String name, String label, String description) {
        spec.addOption(OptionSpec.builder(name)
                .paramLabel(label)
                .type(String.class)
                .description(description)
                .build());
    }

    @Override
    public ExitStatus run(ParseResult parsed, Terminal terminal) {
        Form form = FormArgument.TEXT_CSV_OR_JSON.form(parsed);
        Unit unit = UnitArgument.unit(parsed);
        int decimals = DecimalsArgument.decimals(parsed);
        Result<SpecFileReader.Read> result = SpecFileReader.read(FileArgument.file(parsed));
        List<Diagnostic> findings = new ArrayList<>(result.diagnostics());
        Optional<SpecFileReader.Read> read = result.value();
        Optional<Answer> answer = read.flatMap(spec -> answer(spec, parsed, findings));
        FindingsPrinter.print(findings, terminal.err(), terminal.colour(), false);
        if (answer.isEmpty()) {
            return ExitStatus.of(findings);
        }
        switch (form) {
            case TEXT ->
                terminal.out()
                        .print(answer.get().text(unit, decimals) + "\n" + Summary.checked(read.get(), findings) + "\n"
                                + Cautions.TEXT);
            case CSV -> terminal.out().print(answer.get().csv(unit, decimals));
            case JSON -> terminal.out().print(answer.get().json(unit));
        }
        return parsed.hasMatchedOption("--tree")
                ? writeTree(read.get(), parsed, form, terminal)
                : ExitStatus.of(findings);
    }

    private static ExitStatus writeTree(SpecFileReader.Read read, ParseResult parsed, Form form, Terminal terminal) {
        Terminal beside = form == Form.TEXT ? terminal : new Terminal(terminal.err(), terminal.err(), false);
        beside.out().println();
        return TreeFile.write(read.tree(), FileArgument.file(parsed), parsed.matchedOptionValue("--tree", ""), beside);
    }

    private static Optional<Answer> answer(SpecFileReader.Read spec, ParseResult parsed, List<Diagnostic> findings) {
        Doubt doubt = CarcassesArgument.doubt(parsed);
        List<Promise> promises = PromiseArgument.promises(parsed, doubt);
        OptionalInt number = CarcassesArgument.carcasses(parsed, !promises.isEmpty());
        if (number.isPresent() && !promises.isEmpty()) {
            throw new WrongUsage("What is promised names carcasses of its own; leave --carcasses out.");
        }
        Yields ready = Yields.of(spec.tree(), WorkArgument.working(parsed).with(PairsArgument.pairs(parsed)));
        Measurements measured = MeasureArgument.measurements(parsed);
        Result<ExpectedYields> result = WeightArgument.weight(parsed)
                .map(weight -> ready.forCarcass(weight, measured))
                .orElseGet(() -> ready.forTypicalCarcass(measured));
        findings.addAll(result.diagnostics());
        if (number.isEmpty()) {
            return result.value().map(one -> new Answer.OfOne(one, promises));
        }
        return result.value()
                .map(one -> CarcassesArgument.lot(parsed, number.getAsInt(), one.given()))
                .flatMap(lot -> ready.forCarcasses(lot, measured, doubt).value())
                .<Answer>map(Answer.OfSeveral::new);
    }
}
