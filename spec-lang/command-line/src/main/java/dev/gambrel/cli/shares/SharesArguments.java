package dev.gambrel.cli.shares;

import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.yields.houseshares.TableWorth;
import dev.gambrel.yields.testedcuts.Mean;
import dev.gambrel.yields.testedcuts.Prior;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.function.IntUnaryOperator;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** How shares are to be worked out, on the command line. */
final class SharesArguments {
    private static final String MEAN = "--mean";
    private static final String PRIOR = "--prior";
    private static final String DECIMALS = "--decimals";
    private static final Pattern WORTH = Pattern.compile("[0-9]{1,6}(\\.[0-9]{1,6})?");
    private static final Pattern PLACES = Pattern.compile("[0-6]");

    private SharesArguments() {}

    static List<OptionSpec> options() {
        return List.of(
                option(MEAN, "WORD")
                        .description(
                                "sums: part over cut, all tests together, every kilogram counts once (if not said); shares:"
                                        + " every carcass counts once; ratios: as shares, by the ratios between parts, so that"
                                        + " ranges stay inside the whole.")
                        .build(),
                option(PRIOR, "TESTS")
                        .description(
                                "Let what is stated now count as so many tests, such as 4: few tests are then drawn"
                                        + " towards it, all parts alike.")
                        .build(),
                option(DECIMALS, "N")
                        .description(
                                "Places of the proposed shares, 0 to 6; as many as the cut is written with if not said.")
                        .build());
    }

    private static OptionSpec.Builder option(String name, String label) {
        return OptionSpec.builder(name).paramLabel(label).type(String.class);
    }

    static Mean mean(ParseResult parsed) {
        String word = parsed.matchedOptionValue(MEAN, "sums");
        return Arrays.stream(Mean.values())
                .filter(mean -> word(mean).equalsIgnoreCase(word))
                .findFirst()
                .orElseThrow(() -> new WrongUsage("“" + word + "” is no mean; there are "
                        + Arrays.stream(Mean.values())
                                .map(SharesArguments::word)
                                .collect(Collectors.joining(", "))
                        + "."));
    }

    private static String word(Mean mean) {
        return mean.name().toLowerCase(Locale.ROOT);
    }

    static Prior prior(ParseResult parsed) {
        if (!parsed.hasMatchedOption(PRIOR)) {
            return new Prior.None();
        }
        String word = parsed.matchedOptionValue(PRIOR, "");
        double tests = WORTH.matcher(word).matches() ? Double.parseDouble(word) : 0;
        if (tests == 0) {
            throw new WrongUsage("“" + word + "” is no number of tests; write one above 0, such as --prior 4.");
        }
        return new Prior.Stated(new TableWorth(tests));
    }

    /** From the places that a cut is written with to those that are asked for. */
    static IntUnaryOperator places(ParseResult parsed) {
        if (!parsed.hasMatchedOption(DECIMALS)) {
            return IntUnaryOperator.identity();
        }
        String word = parsed.matchedOptionValue(DECIMALS, "");
        if (!PLACES.matcher(word).matches()) {
            throw new WrongUsage("“" + word + "” is not a number of places from 0 to 6.");
        }
        int asked = Integer.parseInt(word);
        return written -> asked;
    }
}
