package dev.gambrel.cli.number;

import dev.gambrel.cli.argument.FormArgument;
import dev.gambrel.cli.argument.FormArgument.Form;
import dev.gambrel.cli.json.NumberJson;
import dev.gambrel.cli.number.report.LabelReport;
import dev.gambrel.cli.number.report.MeatCodeReport;
import dev.gambrel.cli.number.report.NumberReport;
import dev.gambrel.cli.terminal.ExitStatus;
import dev.gambrel.cli.terminal.FindingsPrinter;
import dev.gambrel.cli.terminal.Terminal;
import dev.gambrel.cli.verb.Verb;
import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.references.gs1.ElementString;
import dev.gambrel.references.gs1.ElementStrings;
import dev.gambrel.references.gs1.Gtin;
import dev.gambrel.references.item.Reference;
import dev.gambrel.references.item.Scheme;
import dev.gambrel.references.unece.MeatCodes;
import dev.gambrel.text.SourceText;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.Stream;
import picocli.CommandLine.Model.CommandSpec;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.Model.PositionalParamSpec;
import picocli.CommandLine.ParseResult;

/** Says what a published number means: of an item, a meat code, or what stands in the bar code of a label. */
public final class NumberVerb implements Verb {
    /** The word for it. */
    public static final String NAME = "number";

    private static final String LABEL = "GS1";
    private static final String TRADE_ITEM = "GTIN";
    private static final int LONGEST_FIGURE = 12;
    private static final Pattern SCANNED = Pattern.compile("00[0-9]{18}|0[12][0-9]{14}(?=[^ ])");
    private static final Pattern WEIGHT = Pattern.compile("([0-9]+(?:\\.[0-9]+)?|\\.[0-9]+) *(\\p{L}+)");

    @Override
    public String name() {
        return NAME;
    }

    @Override
    public CommandSpec spec() {
        CommandSpec spec = CommandSpec.create();
        spec.usageMessage()
                .description("Say what a published number means, and in which weight range a piece lies.")
                .footer(
                        "",
                        "gambrel number 10164300153201040050               a UNECE meat code",
                        "gambrel number UNECE 2240                         a cut of UNECE, IMPS or the Australian handbook",
                        "gambrel number IMPS 112 --weight \"8.5 lb\"         in which range is the piece?",
                        "gambrel number \"(01)…(3103)000035(10)A1\"          what a label says; raw as scanned after the word GS1",
                        "It ends with 1 where a number is wrong or not held, or a piece lies in no range.");
        option(spec, "--weight", "WEIGHT", "What a piece weighs, such as \"8.5 lb\".");
        option(spec, "--range", "RANGE", "The range in which it should lie, such as B.");
        option(spec, "--edition", "EDITION", "Which edition of the publication, such as 2007; any if not said.");
        option(
                spec,
                "--year",
                "YEAR",
                "The year in which a label is read, such as 2026: it tells the century of dates.");
        spec.addOption(FormArgument.TEXT_OR_JSON.option());
        spec.addPositional(PositionalParamSpec.builder()
                .paramLabel("NUMBER")
                .arity("1..3")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .description("A number, with its scheme before it where it is of an item.")
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
        Answer answer = answer(parsed);
        FindingsPrinter.print(answer.findings(), terminal.err(), terminal.colour(), false);
        for (NumberReport report : answer.reports()) {
            terminal.out().print(asJson ? NumberJson.write(report) : NumberText.of(report));
        }
        return ExitStatus.of(answer.findings());
    }

    private static Answer answer(ParseResult parsed) {
        List<String> words = parsed.matchedPositionalValue(0, List.<String>of());
        Optional<Scheme> scheme = Scheme.of(words.get(0));
        if (scheme.isPresent()) {
            return item(scheme.get(), words, parsed);
        }
        boolean isLabel = words.get(0).equalsIgnoreCase(LABEL);
        boolean isTradeItem = words.get(0).equalsIgnoreCase(TRADE_ITEM);
        String written = words.stream().skip(isLabel || isTradeItem ? 1 : 0).collect(Collectors.joining(" "));
        refuse(parsed, "--weight", "--range", "--edition");
        if (written.isEmpty()) {
            throw new WrongUsage("Write the number, such as: gambrel number 10164300153201040050");
        }
        SourceText text = new SourceText(NAME, written);
        if (isLabel || isElementString(written)) {
            OptionalInt year = year(parsed);
            return Answer.of(ElementStrings.read(text), label -> LabelReport.of(label, year));
        }
        refuse(parsed, "--year");
        return isTradeItem || written.matches("[0-9]{8}|[0-9]{12,14}")
                ? Answer.of(Gtin.read(text), LabelReport::of)
                : Answer.of(MeatCodes.decode(text), MeatCodeReport::of);
    }

    /** No species has the digits 00, 01 or 02, so such a number is the beginning of what a scanner read. */
    private static boolean isElementString(String written) {
        return SCANNED.matcher(written).lookingAt()
                || written.startsWith("(")
                || written.startsWith("]")
                || written.indexOf(ElementString.SEPARATOR) >= 0;
    }

    private static void refuse(ParseResult parsed, String... options) {
        Stream.of(options).filter(parsed::hasMatchedOption).findFirst().ifPresent(option -> {
            throw new WrongUsage(option + " says nothing of such a number.");
        });
    }

    private static Answer item(Scheme scheme, List<String> words, ParseResult parsed) {
        refuse(parsed, "--year");
        if (words.size() != 2) {
            throw new WrongUsage("Write scheme and number, such as: gambrel number " + scheme.word() + " 2240");
        }
        Reference reference = new Reference(
                scheme,
                words.get(1).strip(),
                parsed.matchedOptionValue("--edition", "").strip());
        return new ItemQuestion(
                        reference,
                        weight(parsed),
                        parsed.matchedOptionValue("--range", "").strip())
                .answer();
    }

    private static Optional<Quantity> weight(ParseResult parsed) {
        if (!parsed.hasMatchedOption("--weight")) {
            return Optional.empty();
        }
        String written = parsed.matchedOptionValue("--weight", "");
        Matcher form = WEIGHT.matcher(written.strip());
        if (!form.matches() || form.group(1).length() > LONGEST_FIGURE) {
            throw noWeight(written);
        }
        Unit unit = Unit.of(form.group(2))
                .filter(known -> known.dimension() == Dimension.WEIGHT)
                .orElseThrow(() -> noWeight(written));
        return Optional.of(new Quantity(new BigDecimal(form.group(1)), unit));
    }

    private static WrongUsage noWeight(String written) {
        return new WrongUsage(
                "“" + written + "” after --weight is not a weight; write the figure with a point and its unit,"
                        + " such as \"8.5 lb\".");
    }

    private static OptionalInt year(ParseResult parsed) {
        if (!parsed.hasMatchedOption("--year")) {
            return OptionalInt.empty();
        }
        String word = parsed.matchedOptionValue("--year", "");
        if (!word.matches("[0-9]{4}") || word.startsWith("0")) {
            throw new WrongUsage("“" + word + "” is not a year from 1000 to 9999.");
        }
        return OptionalInt.of(Integer.parseInt(word));
    }
}
