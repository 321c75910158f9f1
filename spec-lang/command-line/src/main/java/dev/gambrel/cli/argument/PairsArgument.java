package dev.gambrel.cli.argument;

import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.yields.working.Pairs;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** How the two pieces of a pair vary together, on the command line: {@code --pairs independent}, {@code --pairs 0.8}. */
public final class PairsArgument {
    private static final String NAME = "--pairs";

    private PairsArgument() {}

    /**
     * Takes how pairs vary together.
     *
     * @return the option
     */
    public static OptionSpec option() {
        return OptionSpec.builder(NAME)
                .paramLabel("HOW")
                .type(String.class)
                .description("How the two pieces of a pair vary together: alike, independent, or a correlation"
                        + " between 0 and 1; alike if not said. What one piece strays by depends on it.")
                .build();
    }

    /**
     * How pairs vary together.
     *
     * @param parsed what stands on the command line
     * @return as asked for; alike if nothing was
     * @throws WrongUsage if it is neither a word for it nor a correlation
     */
    public static Pairs pairs(ParseResult parsed) {
        String word = parsed.matchedOptionValue(NAME, "alike");
        return switch (word) {
            case "alike" -> Pairs.ALIKE;
            case "independent" -> Pairs.INDEPENDENT;
            default -> {
                if (!word.matches("0|1|[01]\\.[0-9]{1,6}") || Double.parseDouble(word) > 1) {
                    throw new WrongUsage("“" + word
                            + "” does not say how pairs vary together; write alike, independent, or a correlation such as"
                            + " 0.8.");
                }
                yield new Pairs(Double.parseDouble(word));
            }
        };
    }
}
