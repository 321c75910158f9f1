package dev.gambrel.cli.argument;

import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.yields.table.YieldTable;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** How many places weights are printed with, on the command line: {@code --decimals 3}. */
public final class DecimalsArgument {
    private static final String NAME = "--decimals";

    private DecimalsArgument() {}

    /**
     * Takes the number of places.
     *
     * @return the option
     */
    public static OptionSpec option() {
        return OptionSpec.builder(NAME)
                .paramLabel("N")
                .type(String.class)
                .description("Places after the point, 0 to 6; 2 if not said.")
                .build();
    }

    /**
     * The number of places that was asked for.
     *
     * @param parsed what stands on the command line
     * @return 0 to {@link YieldTable#MAX_DECIMALS}; 2 if none was asked for
     * @throws WrongUsage if it is not such a number
     */
    public static int decimals(ParseResult parsed) {
        String word = parsed.matchedOptionValue(NAME, "2");
        if (word.length() == 1 && word.charAt(0) >= '0' && word.charAt(0) <= '0' + YieldTable.MAX_DECIMALS) {
            return word.charAt(0) - '0';
        }
        throw new WrongUsage("“" + word + "” is not a number of places from 0 to " + YieldTable.MAX_DECIMALS + ".");
    }
}
