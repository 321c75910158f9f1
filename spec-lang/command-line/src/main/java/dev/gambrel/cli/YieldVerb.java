package dev.gambrel.cli;

import dev.gambrel.cli.json.YieldJson;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Unit;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.estimate.Measurements;
import dev.gambrel.yields.table.YieldTable;
import dev.gambrel.yields.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** Says what a carcass should give. */
final class YieldVerb implements Verb {
    static final String NAME = "yield";

    /** How the figures are printed. */
    private enum Form {
        TEXT,
        CSV,
        JSON
    }

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
        option(
                spec,
                "--weight",
                "WEIGHT",
                "The carcass weight with its unit and basis, such as \"47 lb 6 oz cold\";"
                        + " without it, the middle of the band.");
        options(
                spec,
                "--work",
                "CUT = WAY",
                "How a cut is worked in this run, such as \"topside = whole joint\" or"
                        + " \"topside = steaks 50 %%, whole joint 50 %%\"; may be given for several cuts.");
        options(
                spec,
                "--given",
                "GRADE = VALUE",
                "What is known of the carcass, such as \"season = winter\"; may be given for several grades.");
        spec.addOption(MeasureArgument.OPTION);
        option(spec, "--unit", "UNIT", "The unit to print in: kg, g, lb or oz; kg if not said.");
        option(spec, "--decimals", "N", "Places after the point, 0 to 6; 2 if not said.");
        option(spec, "--as", "FORM", "text, csv or json; text if not said.");
        option(spec, "--tree", "FILE", "Also write the tree as JSON to this file.");
        spec.addPositional(PositionalParamSpec.builder()
                .paramLabel("FILE")
                .arity("1")
                .required(true)
                .type(String.class)
                .description("The specification (.cuts), or a tree (.json).")
                .build());
        return spec;
    }

    private static void option(CommandSpec spec, String name, String label, String description) {
        spec.addOption(OptionSpec.builder(name)
                .paramLabel(label)
                .type(String.class)
                .description(description)
                .build());
    }

    private static void options(CommandSpec spec, String name, String label, String description) {
        spec.addOption(OptionSpec.builder(name)
                .paramLabel(label)
                .type(List.class)
                .auxiliaryTypes(String.class)
                .arity("1")
                .description(description)
                .build());
    }

    @Override
    public ExitStatus run(ParseResult parsed, Terminal terminal) {
        Form form = form(parsed.matchedOptionValue("--as", "text"));
        Unit unit = unit(parsed.matchedOptionValue("--unit", "kg"));
        int decimals = decimals(parsed.matchedOptionValue("--decimals", "2"));
        Result<SpecFileReader.Read> result = SpecFileReader.read(parsed.matchedPositionalValue(0, ""));
        List<Diagnostic> findings = new ArrayList<>(result.diagnostics());
        Optional<SpecFileReader.Read> read = result.value();
        Optional<ExpectedYields> yields = read.flatMap(spec -> yields(spec, parsed, findings));
        FindingsPrinter.print(findings, terminal.err(), terminal.colour(), false);
        if (yields.isEmpty()) {
            return ExitStatus.of(findings);
        }
        switch (form) {
            case TEXT ->
                terminal.out()
                        .print(YieldTable.of(yields.get(), unit, decimals).text() + "\n"
                                + Summary.checked(read.get(), findings) + "\n" + Cautions.TEXT);
            case CSV ->
                terminal.out().print(YieldTable.of(yields.get(), unit, decimals).csv());
            case JSON -> terminal.out().print(YieldJson.write(yields.get(), unit));
        }
        return parsed.hasMatchedOption("--tree")
                ? writeTree(read.get(), parsed, form, terminal)
                : ExitStatus.of(findings);
    }

    private static ExitStatus writeTree(SpecFileReader.Read read, ParseResult parsed, Form form, Terminal terminal) {
        Terminal beside = form == Form.TEXT ? terminal : new Terminal(terminal.err(), terminal.err(), false);
        beside.out().println();
        return TreeVerb.write(
                read.tree(), parsed.matchedPositionalValue(0, ""), parsed.matchedOptionValue("--tree", ""), beside);
    }

    private static Optional<ExpectedYields> yields(
            SpecFileReader.Read spec, ParseResult parsed, List<Diagnostic> findings) {
        Yields ready = Yields.of(spec.tree(), working(parsed));
        Measurements measured = MeasureArgument.measurements(parsed);
        Result<ExpectedYields> result = parsed.hasMatchedOption("--weight")
                ? ready.forCarcass(WeightArgument.parse(parsed.matchedOptionValue("--weight", "")), measured)
                : ready.forTypicalCarcass(measured);
        findings.addAll(result.diagnostics());
        return result.value();
    }

    private static Working working(ParseResult parsed) {
        List<String> work = parsed.matchedOptionValue("--work", List.of());
        List<String> given = parsed.matchedOptionValue("--given", List.of());
        return new Working(
                work.stream().map(WorkArgument::order).toList(),
                given.stream().map(WorkArgument::given).toList());
    }

    private static Form form(String word) {
        for (Form form : Form.values()) {
            if (form.name().equalsIgnoreCase(word)) {
                return form;
            }
        }
        throw new WrongUsage("“" + word + "” is not a form of output; there are text, csv and json.");
    }

    private static Unit unit(String word) {
        return Unit.of(word)
                .filter(unit -> unit.dimension() == Dimension.WEIGHT)
                .orElseThrow(() -> new WrongUsage(
                        "“" + word + "” is not a unit of weight; there are " + Dimension.WEIGHT.unitSymbols() + "."));
    }

    private static int decimals(String word) {
        if (word.length() == 1 && word.charAt(0) >= '0' && word.charAt(0) <= '0' + YieldTable.MAX_DECIMALS) {
            return word.charAt(0) - '0';
        }
        throw new WrongUsage("“" + word + "” is not a number of places from 0 to " + YieldTable.MAX_DECIMALS + ".");
    }
}
