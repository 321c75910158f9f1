package dev.gambrel.cli.argument;

import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.yields.Doubt;
import java.util.List;
import java.util.OptionalInt;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** How many carcasses, and on how many cutting tests their shares rest: {@code --carcasses 40 --cutting-tests 12}. */
public final class CarcassesArgument {
    private static final String CARCASSES = "--carcasses";
    private static final String TESTS = "--cutting-tests";

    private CarcassesArgument() {}

    /**
     * Takes both.
     *
     * @return the options
     */
    public static List<OptionSpec> options() {
        return List.of(
                option(
                        CARCASSES,
                        "Say what so many carcasses of this weight give together, with what they differ by and the"
                                + " doubt about the mean shares apart."),
                option(
                        TESTS,
                        "With --carcasses: on how many cutting tests the shares rest, which says how sure their means"
                                + " are."));
    }

    private static OptionSpec option(String name, String description) {
        return OptionSpec.builder(name)
                .paramLabel("N")
                .type(String.class)
                .description(description)
                .build();
    }

    /**
     * How many carcasses were asked for.
     *
     * @param parsed what stands on the command line
     * @return 1 or more; empty if what one gives was asked for
     * @throws WrongUsage if it is no number of carcasses
     */
    public static OptionalInt carcasses(ParseResult parsed) {
        if (parsed.hasMatchedOption(CARCASSES)) {
            return OptionalInt.of(number(parsed, CARCASSES, "carcasses"));
        } else if (parsed.hasMatchedOption(TESTS)) {
            throw new WrongUsage(TESTS + " says how sure the means of several carcasses are; say of how many with "
                    + CARCASSES + ".");
        }
        return OptionalInt.empty();
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
            throw new WrongUsage(
                    "“" + word + "” is not a number of " + what + "; write a whole number from 1, such as 40.");
        }
        return Integer.parseInt(word);
    }
}
