package dev.gambrel.cli.carcasses;

import dev.gambrel.batches.BatchLimits;
import dev.gambrel.batches.BatchOrder;
import dev.gambrel.batches.Each;
import dev.gambrel.cli.argument.FormArgument;
import dev.gambrel.cli.argument.FormArgument.Form;
import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import java.util.Arrays;
import java.util.List;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** What may be said on the command line of a file of carcasses. */
final class CarcassOptions {
    static final String STANDARD = "-";

    private static final String FROM = "--from";
    private static final String TO = "--to";
    private static final String REFUSED = "--refused";
    private static final String EACH = "--each";
    private static final String CARRY = "--carry";
    private static final String COMMA = "--decimal-comma";
    private static final String STOP = "--stop-at-first";
    private static final String THREADS = "--threads";

    private final ParseResult parsed;

    private CarcassOptions(ParseResult parsed) {
        this.parsed = parsed;
    }

    static CarcassOptions of(ParseResult parsed) {
        return new CarcassOptions(parsed);
    }

    static List<OptionSpec> all() {
        return List.of(
                option(FROM, "CSV", "The carcasses, one to a row; - for what is handed to the program.")
                        .required(true)
                        .build(),
                option(TO, "CSV", "Write what each carcass gives to this file; - to print it.")
                        .build(),
                option(REFUSED, "CSV", "Write rows that are refused to this file, with line and reason.")
                        .build(),
                option(EACH, "WHAT", "What is written of each carcass: totals or lines; totals if not said.")
                        .build(),
                OptionSpec.builder(CARRY)
                        .paramLabel("COLUMN")
                        .type(String[].class)
                        .description("A column to carry through, such as the tag; may be given for several.")
                        .build(),
                flag(COMMA, "A comma stands before the decimals: 1,234 is a little over one."),
                flag(STOP, "End with the first row that is refused."),
                option(THREADS, "N", "How many threads work; as many as the machine has if not said.")
                        .build(),
                FormArgument.TEXT_CSV_OR_JSON.option("How the sums are printed: "));
    }

    private static OptionSpec.Builder option(String name, String label, String description) {
        return OptionSpec.builder(name).paramLabel(label).type(String.class).description(description);
    }

    private static OptionSpec flag(String name, String description) {
        return OptionSpec.builder(name)
                .type(boolean.class)
                .description(description)
                .build();
    }

    String from() {
        return parsed.matchedOptionValue(FROM, "");
    }

    boolean isWritten() {
        return parsed.hasMatchedOption(TO);
    }

    /** Whether what each carcass gives is printed, so that the sums must go elsewhere. */
    boolean isWrittenOut() {
        return to().equals(STANDARD);
    }

    String to() {
        return parsed.matchedOptionValue(TO, "");
    }

    boolean keepsRefused() {
        return parsed.hasMatchedOption(REFUSED);
    }

    String refused() {
        return parsed.matchedOptionValue(REFUSED, "");
    }

    Form form() {
        return FormArgument.TEXT_CSV_OR_JSON.form(parsed);
    }

    BatchOrder order(Unit unit, int decimals) {
        BatchOrder order = new BatchOrder(
                isWritten() ? each() : Each.NOTHING,
                Arrays.stream(parsed.matchedOptionValue(CARRY, new String[0]))
                        .map(CarcassOptions::name)
                        .toList(),
                new BatchOrder.Printed(unit, decimals),
                parsed.hasMatchedOption(COMMA) ? BatchOrder.Numbers.WITH_COMMA : BatchOrder.Numbers.WITH_POINT,
                parsed.hasMatchedOption(STOP),
                0,
                BatchLimits.DEFAULT);
        return parsed.hasMatchedOption(THREADS) ? order.onThreads(threads() - 1) : order.onAllThreads();
    }

    private static TradeName name(String column) {
        if (!TradeName.isAcceptable(column)) {
            throw new WrongUsage("“" + column + "” cannot be the name of a column.");
        }
        return TradeName.of(column);
    }

    private Each each() {
        String word = parsed.matchedOptionValue(EACH, "totals");
        return switch (word) {
            case "totals" -> Each.TOTALS;
            case "lines" -> Each.LINES;
            default -> throw new WrongUsage("“" + word + "” cannot be written of each; there are totals and lines.");
        };
    }

    /** One thread reads, the others are helpers. */
    private int threads() {
        String word = parsed.matchedOptionValue(THREADS, "");
        boolean isNumber = !word.isEmpty() && word.length() <= 3 && word.chars().allMatch(c -> c >= '0' && c <= '9');
        int threads = isNumber ? Integer.parseInt(word) : 0;
        if (threads < 1 || threads > BatchOrder.MOST_THREADS) {
            throw new WrongUsage(
                    "“" + word + "” is not a number of threads from 1 to " + BatchOrder.MOST_THREADS + ".");
        }
        return threads;
    }
}
