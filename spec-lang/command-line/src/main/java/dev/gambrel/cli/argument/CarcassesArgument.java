package dev.gambrel.cli.argument;

import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.yields.CarcassLot;
import dev.gambrel.yields.CarcassWeight;
import dev.gambrel.yields.Doubt;
import java.math.BigDecimal;
import java.util.List;
import java.util.OptionalInt;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/**
 * How many carcasses, how far their weights stray, and on how many cutting tests their shares rest: {@code --carcasses 40
 * --weight-spread "1.5 kg" --cutting-tests 12}.
 */
public final class CarcassesArgument {
    private static final String CARCASSES = "--carcasses";
    private static final String SPREAD = "--weight-spread";
    private static final String TESTS = "--cutting-tests";
    private static final Pattern WEIGHT = Pattern.compile("([0-9]{1,6}(?:\\.[0-9]{1,6})?)\\s*([a-z]+)");

    private CarcassesArgument() {}

    /**
     * Takes all three.
     *
     * @return the options
     */
    public static List<OptionSpec> options() {
        return List.of(
                option(
                        CARCASSES,
                        "N",
                        "Say what so many carcasses of this weight give together, with what they differ by and the"
                                + " doubt about the mean shares apart."),
                option(
                        SPREAD,
                        "WEIGHT",
                        "With --carcasses: one standard deviation of the weight of one, such as \"1.5 kg\"; without it each"
                                + " weighs the same."),
                option(
                        TESTS,
                        "N",
                        "With --carcasses or --promise: on how many cutting tests the shares rest, which says how sure"
                                + " their means are."));
    }

    private static OptionSpec option(String name, String label, String description) {
        return OptionSpec.builder(name)
                .paramLabel(label)
                .type(String.class)
                .description(description)
                .build();
    }

    /**
     * How many carcasses were asked for.
     *
     * @param parsed what stands on the command line
     * @param isPromising whether something is promised, which rests on cutting tests too
     * @return 1 or more; empty if what one gives was asked for
     * @throws WrongUsage if it is no number of carcasses
     */
    public static OptionalInt carcasses(ParseResult parsed, boolean isPromising) {
        if (parsed.hasMatchedOption(CARCASSES)) {
            return OptionalInt.of(number(parsed, CARCASSES, "carcasses"));
        }
        for (String option : isPromising ? List.of(SPREAD) : List.of(TESTS, SPREAD)) {
            if (parsed.hasMatchedOption(option)) {
                throw new WrongUsage(option + " is said of several carcasses; say of how many with " + CARCASSES + ".");
            }
        }
        return OptionalInt.empty();
    }

    /**
     * The carcasses that were asked for.
     *
     * @param parsed what stands on the command line
     * @param number how many
     * @param each what each weighs, or is expected to weigh where their weights stray
     * @return the carcasses
     * @throws WrongUsage if what their weights stray by is no weight
     */
    public static CarcassLot lot(ParseResult parsed, int number, CarcassWeight each) {
        if (!parsed.hasMatchedOption(SPREAD)) {
            return CarcassLot.alike(number, each);
        }
        String word = parsed.matchedOptionValue(SPREAD, "").strip();
        Matcher weight = WEIGHT.matcher(word);
        if (!weight.matches()) {
            throw noWeight(word);
        }
        Unit unit = Unit.of(weight.group(2))
                .filter(known -> known.dimension() == Dimension.WEIGHT)
                .orElseThrow(() -> noWeight(word));
        Quantity spread = new Quantity(new BigDecimal(weight.group(1)), unit);
        if (spread.compareTo(each.mass()) >= 0) {
            throw new WrongUsage("Carcasses of " + each.mass() + " do not stray by " + spread
                    + "; write one standard deviation of the weight of one, such as \"1.5 kg\".");
        }
        return CarcassLot.expected(number, new Expected.PlusMinus(each.mass(), spread), each.basis());
    }

    private static WrongUsage noWeight(String word) {
        return new WrongUsage(
                "“" + word + "” is not what weights stray by; write one standard deviation with its unit, such as"
                        + " \"1.5 kg\".");
    }

    /**
     * How sure the mean shares are.
     *
     * @param parsed what stands on the command line
     * @return from as many cutting tests as were said, if any
     * @throws WrongUsage if it is no number of tests
     */
    public static Doubt doubt(ParseResult parsed) {
        return parsed.hasMatchedOption(TESTS)
                ? Doubt.fromTests(number(parsed, TESTS, "cutting tests"))
                : Doubt.NOT_SAID;
    }

    private static int number(ParseResult parsed, String option, String what) {
        String word = parsed.matchedOptionValue(option, "");
        if (!word.matches("[1-9][0-9]{0,6}")) {
            throw new WrongUsage("“" + word + "” is not a number of " + what
                    + "; write a whole number from 1 to 9999999, such as 40.");
        }
        return Integer.parseInt(word);
    }
}
