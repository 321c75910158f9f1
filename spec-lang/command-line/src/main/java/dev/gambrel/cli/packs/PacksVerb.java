package dev.gambrel.cli.packs;

import dev.gambrel.cli.argument.FileArgument;
import dev.gambrel.cli.argument.FormArgument;
import dev.gambrel.cli.argument.FormArgument.Form;
import dev.gambrel.cli.argument.UnitArgument;
import dev.gambrel.cli.json.PackVerdictJson;
import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.FindingsPrinter;
import dev.gambrel.cli.terminal.Terminal;
import dev.gambrel.cli.verb.Verb;
import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.compiler.source.FileCode;
import dev.gambrel.compiler.source.FolderSources;
import dev.gambrel.compiler.source.Found;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.diagnostic.Visible;
import dev.gambrel.limits.Limits;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.SourceText;
import dev.gambrel.yields.packs.Answer;
import dev.gambrel.yields.packs.Batch;
import dev.gambrel.yields.packs.BatchVerdict;
import dev.gambrel.yields.packs.Tare;
import dev.gambrel.yields.packs.WeighedPacks;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** Says whether packs that were weighed keep the rules on average quantity. */
public final class PacksVerb implements Verb {
    /** The word for it. */
    public static final String NAME = "packs";

    private static final String STANDARD_INPUT = "-";
    private static final int LONGEST_NUMBER = 9;

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public CommandSpec spec() {
        CommandSpec spec = CommandSpec.create();
        spec.usageMessage()
                .description("Say whether packs of one weight that were weighed keep the rules on average quantity.")
                .footer(
                        "",
                        "Example: gambrel packs weights.txt --nominal \"200 g\" --batch 600 --tare \"12 g\" --unit g",
                        "It ends with 1 where the batch is not accepted or not settled.",
                        BatchVerdict.CAUTION);
        option(spec, "--nominal", "WEIGHT", "The net weight that each label says, such as \"200 g\".");
        option(
                spec,
                "--batch",
                "N",
                "How many packs the batch holds; with --test packer as many as were weighed if not said.");
        option(spec, "--weights", "WEIGHTS", "The weights here and not in a file: \"201.4 g, 199.8 g\".");
        option(spec, "--unit", "UNIT", "The unit of weights that are written without one.");
        option(spec, "--tare", "WEIGHT", "What wrapping weighs with every pack; taken off each.");
        option(
                spec,
                "--test",
                "TEST",
                "One of: " + NamedTest.words() + "; eu if not said. \"opened\" is the destructive test, packer the"
                        + " packer's own three rules over the packs weighed.");
        spec.addOption(FormArgument.TEXT_OR_JSON.option());
        spec.addPositional(PositionalParamSpec.builder()
                .paramLabel("FILE")
                .arity("0..1")
                .type(String.class)
                .description("One weight a line; - for what is handed to the program.")
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

    @Override
    public ExitStatus run(ParseResult parsed, Terminal terminal) {
        boolean asJson = FormArgument.TEXT_OR_JSON.form(parsed) == Form.JSON;
        Quantity nominal = nominal(parsed);
        Tare tare = new Tare(weight("--tare", parsed.matchedOptionValue("--tare", "0 g")));
        NamedTest test = test(parsed.matchedOptionValue("--test", "eu"));
        Unit unit = unit(parsed);
        long batch = batch(parsed, test);
        Found found = weights(parsed, terminal);
        if (found instanceof Found.Refused refused && refused.code() == FileCode.MISSING) {
            terminal.err()
                    .println("There is no file “" + Visible.text(parsed.matchedPositionalValue(0, "")) + "” here.");
            terminal.err().println("→ Look at how its name is written, and which folder you are in.");
            return ExitStatus.COULD_NOT;
        }
        if (found instanceof Found.Refused refused) {
            return tell(List.of(refused.finding(parsed.matchedPositionalValue(0, ""), Limits.DEFAULT)), terminal);
        }
        SourceText text = ((Found.Text) found).text();
        Result<WeighedPacks> packs = WrittenWeights.read(text, unit, tare, nominal);
        List<Diagnostic> findings = new ArrayList<>(packs.diagnostics());
        Optional<BatchVerdict> verdict = packs.value().flatMap(weighed -> {
            Batch of = new Batch(batch == 0 ? weighed.count() : batch, nominal);
            Result<BatchVerdict> result = BatchVerdict.of(test.test(), of, weighed);
            result.diagnostics().forEach(finding -> findings.add(finding.at(place -> new Place.InFile(text.name()))));
            return result.value();
        });
        ExitStatus status = tell(findings, terminal);
        verdict.ifPresent(made -> terminal.out().print(asJson ? PackVerdictJson.write(made) : VerdictText.of(made)));
        boolean passes =
                verdict.map(BatchVerdict::answer).filter(Answer.ACCEPT::equals).isPresent();
        return passes ? status : status.and(ExitStatus.FINDINGS);
    }

    private static ExitStatus tell(List<Diagnostic> findings, Terminal terminal) {
        FindingsPrinter.print(findings, terminal.err(), terminal.colour(), false);
        return ExitStatus.of(findings);
    }

    private static Found weights(ParseResult parsed, Terminal terminal) {
        String file = parsed.matchedPositionalValue(0, "");
        boolean inFile = !file.isEmpty();
        if (inFile == parsed.hasMatchedOption("--weights")) {
            throw new WrongUsage("Name a file with the weights, or write them after --weights; one of the two.");
        } else if (!inFile) {
            return new Found.Text(new SourceText("--weights", parsed.matchedOptionValue("--weights", "")));
        }
        return file.equals(STANDARD_INPUT)
                ? FolderSources.read(terminal.in(), "standard input", Limits.DEFAULT)
                : FolderSources.read(FileArgument.path(file), file, Limits.DEFAULT);
    }

    private static Quantity nominal(ParseResult parsed) {
        if (!parsed.hasMatchedOption("--nominal")) {
            throw new WrongUsage("Say what the label says, such as --nominal \"200 g\".");
        }
        Quantity nominal = weight("--nominal", parsed.matchedOptionValue("--nominal", ""));
        if (!WeighedPacks.isAcceptable(nominal)) {
            throw new WrongUsage("A label says more than nothing, and no pack weighs as much as " + nominal + ".");
        }
        return nominal;
    }

    private static Quantity weight(String option, String written) {
        return WrittenWeight.read(written.strip(), Unit.NUMBER)
                .orElseThrow(() -> new WrongUsage("“" + written + "” after " + option
                        + " is not a weight; write the figure with a point and its unit, such as \"200 g\"."));
    }

    private static Unit unit(ParseResult parsed) {
        if (!parsed.hasMatchedOption("--unit")) {
            return Unit.NUMBER;
        }
        return UnitArgument.unit(parsed);
    }

    private static NamedTest test(String word) {
        return NamedTest.of(word)
                .orElseThrow(() -> new WrongUsage("“" + word + "” is no test; there are " + NamedTest.words() + "."));
    }

    /** 0 where the packs weighed are all that is spoken of. */
    private static long batch(ParseResult parsed, NamedTest test) {
        if (parsed.hasMatchedOption("--batch")) {
            return batch(parsed.matchedOptionValue("--batch", ""));
        } else if (test == NamedTest.PACKER) {
            return 0;
        }
        throw new WrongUsage(
                "Say how many packs the batch holds, such as --batch 600, since that decides the test; or take"
                        + " --test packer to hear what the packs weighed show.");
    }

    private static long batch(String word) {
        boolean whole = word.matches("[0-9]{1," + LONGEST_NUMBER + "}");
        if (!whole || Long.parseLong(word) == 0) {
            throw new WrongUsage("“" + word + "” is not a number of packs from 1 to 999999999.");
        }
        return Long.parseLong(word);
    }
}
