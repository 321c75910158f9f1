package dev.gambrel.cli.conform;

import dev.gambrel.cli.argument.FileArgument;
import dev.gambrel.cli.argument.FormArgument;
import dev.gambrel.cli.argument.FormArgument.Form;
import dev.gambrel.cli.argument.WeightArgument;
import dev.gambrel.cli.argument.WorkArgument;
import dev.gambrel.cli.file.SpecFileReader;
import dev.gambrel.cli.json.ConformityJson;
import dev.gambrel.cli.terminal.Cautions;
import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.FindingsPrinter;
import dev.gambrel.cli.terminal.Terminal;
import dev.gambrel.cli.verb.Verb;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.yields.conformance.Conformance;
import dev.gambrel.yields.conformance.ConformanceCode;
import dev.gambrel.yields.conformance.Conformity;
import dev.gambrel.yields.conformance.Question;
import dev.gambrel.yields.conformance.report.ComparedTexts;
import dev.gambrel.yields.conformance.report.ConformityCsv;
import dev.gambrel.yields.conformance.report.ConformitySheet;
import dev.gambrel.yields.conformance.report.ConformityText;
import java.util.List;
import java.util.Optional;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** {@code gambrel conform HOUSE --to BUYER}. */
public final class ConformVerb implements Verb {
    /** What it is called. */
    public static final String NAME = "conform";

    static final String NO_ADVICE = """
            This compares two texts. It looks at no meat, and no answer here is legal advice.
            """;

    private static final String TO = "--to";

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public CommandSpec spec() {
        CommandSpec spec = CommandSpec.create();
        spec.usageMessage()
                .description("Hold a house's specification against what a buyer requires, clause by clause: it meets,"
                        + " it fails, or it is not stated.")
                .footer(
                        "",
                        "Exit status: 0 conforms; 4 not shown to conform; 5 does not conform; 1 if either text has errors",
                        "or the two cannot be compared.",
                        "",
                        "Example: gambrel conform hogget.cuts --to racks-wanted.cuts --html answer.html");
        spec.addOption(OptionSpec.builder(TO)
                .paramLabel("BUYER")
                .required(true)
                .type(String.class)
                .description("What the buyer requires: a requirement or a specification (.cuts), or a tree (.json).")
                .build());
        spec.addOption(MatchArgument.option());
        spec.addOption(WeightArgument.option(
                "--carcass",
                "For which carcass weights are expected, such as"
                        + " \"22 kg cold\"; without it, for the lightest and the heaviest of the house's band."));
        WorkArgument.options().forEach(spec::addOption);
        spec.addOption(FormArgument.TEXT_CSV_OR_JSON.option());
        spec.addOption(PageFile.option());
        spec.addPositional(FileArgument.one("The house's specification (.cuts), or a tree (.json)."));
        return spec;
    }

    @Override
    public ExitStatus run(ParseResult parsed, Terminal terminal) {
        Form form = FormArgument.TEXT_CSV_OR_JSON.form(parsed);
        String house = FileArgument.file(parsed);
        String buyer = parsed.matchedOptionValue(TO, "");
        Optional<PageFile> page = PageFile.of(parsed, house, buyer);
        Question question = new Question(
                MatchArgument.matches(parsed),
                WeightArgument.weight("--carcass", parsed).stream().toList(),
                WorkArgument.working(parsed));
        Result<SpecFileReader.Read> one = read(house, terminal);
        Result<SpecFileReader.Read> other = read(buyer, terminal);
        if (one.value().isEmpty() || other.value().isEmpty()) {
            return ExitStatus.of(one.diagnostics()).and(ExitStatus.of(other.diagnostics()));
        }
        ComparedTexts texts = new ComparedTexts(text(house, one), text(buyer, other));
        Result<Conformity> result =
                Conformance.of(one.orElseThrow().tree(), other.orElseThrow().tree(), question);
        print(result.diagnostics(), texts, terminal);
        if (result.value().isEmpty()) {
            return ExitStatus.FINDINGS;
        }
        ConformitySheet sheet = ConformitySheet.of(result.orElseThrow(), texts);
        terminal.out()
                .print(
                        switch (form) {
                            case TEXT -> ConformityText.of(sheet) + "\n" + NO_ADVICE + Cautions.TEXT;
                            case CSV -> ConformityCsv.of(sheet);
                            case JSON -> ConformityJson.write(result.orElseThrow(), texts);
                        });
        ExitStatus written = page.map(file -> file.write(sheet, terminal)).orElse(ExitStatus.FINE);
        return written == ExitStatus.FINE ? ended(result.orElseThrow()) : written;
    }

    private static Result<SpecFileReader.Read> read(String file, Terminal terminal) {
        Result<SpecFileReader.Read> result = SpecFileReader.read(file);
        FindingsPrinter.print(result.diagnostics(), terminal.err(), terminal.colour(), false);
        return result;
    }

    private static ComparedTexts.Text text(String file, Result<SpecFileReader.Read> read) {
        return new ComparedTexts.Text(file, read.orElseThrow().written());
    }

    /** What stands in the way of any answer is told of the buyer's text, unless it is the house's that is of the wrong kind. */
    private static void print(List<Diagnostic> findings, ComparedTexts texts, Terminal terminal) {
        List<Diagnostic> placed = findings.stream()
                .map(finding -> finding.at(
                        finding.code() == ConformanceCode.NOT_A_SPECIFICATION
                                ? texts.house().written()
                                : texts.buyer().written()))
                .toList();
        FindingsPrinter.print(placed, terminal.err(), terminal.colour(), false);
    }

    private static ExitStatus ended(Conformity conformity) {
        return switch (conformity.overall()) {
            case CONFORMS -> ExitStatus.FINE;
            case NOT_SHOWN -> ExitStatus.NOT_SHOWN;
            case DOES_NOT_CONFORM -> ExitStatus.DOES_NOT_CONFORM;
        };
    }
}
