package dev.gambrel.cli.drift;

import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.yields.control.ChartAnswer;
import dev.gambrel.yields.drift.Baseline;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** How many of the tests set the level. */
final class FirstArgument {
    private static final String NAME = "--first";
    private static final int MOST = 9_999;

    private FirstArgument() {}

    static OptionSpec option() {
        return OptionSpec.builder(NAME)
                .paramLabel("N")
                .type(String.class)
                .description("Let the first N tests say what is usual, " + ChartAnswer.FEWEST
                        + " or more, and hold the later ones against them; all tests if not said.")
                .build();
    }

    static Baseline baseline(ParseResult parsed) {
        if (!parsed.hasMatchedOption(NAME)) {
            return new Baseline.AllTests();
        }
        String word = parsed.matchedOptionValue(NAME, "");
        if (word.matches("[0-9]{1,4}") && Integer.parseInt(word) >= ChartAnswer.FEWEST) {
            return new Baseline.FirstTests(Integer.parseInt(word));
        }
        throw new WrongUsage(
                "“" + word + "” is not a number of tests from " + ChartAnswer.FEWEST + " to " + MOST + ".");
    }
}
