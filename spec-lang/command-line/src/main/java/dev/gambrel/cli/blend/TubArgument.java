package dev.gambrel.cli.blend;

import dev.gambrel.blends.Price;
import dev.gambrel.blends.Tub;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Spread;
import dev.gambrel.yields.lean.Lean;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** A tub on the command line: "80s = 120 kg, lean 80 % ± 2 % visual, 4.20 a kg". */
final class TubArgument {
    private static final String NAME = "--tub";
    private static final String EXAMPLE = "80s = 120 kg, lean 80 % visual";
    private static final Pattern FORM =
            Pattern.compile("(.+?)\\s*=\\s*" + Written.NUMBER + "\\s*([a-z]+)\\s*,?\\s*lean\\s+"
                    + Written.NUMBER + "\\s*%(?:\\s*(?:±|\\+/-|\\+-)\\s*" + Written.NUMBER + "\\s*%)?\\s*,?\\s*"
                    + Written.JUDGED
                    + "(?:\\s*,?\\s*" + Written.NUMBER + "\\s+an?\\s+([a-z]+))?");

    private TubArgument() {}

    static OptionSpec option() {
        return OptionSpec.builder(NAME)
                .paramLabel("TUB")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .arity("1")
                .description(
                        "What is there to blend, such as \"80s = 120 kg, lean 80 %% visual\" or, with how far lots"
                                + " stray and a price, \"flank = 60 kg, lean 60 %% ± 3 %% visual, 2.40 a kg\"; once for each tub.")
                .build();
    }

    static List<Tub> tubs(ParseResult parsed) {
        List<String> written = parsed.matchedOptionValue(NAME, List.of());
        return written.stream().map(TubArgument::tub).toList();
    }

    private static Tub tub(String words) {
        Written written = new Written(NAME, words, EXAMPLE);
        Matcher m = written.by(FORM);
        Spread spread = m.group(5) == null ? Spread.NOT_STATED : new Spread.Stated(written.percent(m.group(5)));
        Lean lean = new Lean(new Estimate(written.percent(m.group(4)), spread), Written.judged(m.group(6)));
        Price price = m.group(7) == null ? Price.NOT_STATED : written.price(m.group(7), m.group(8));
        double kilograms = written.kilograms(m.group(2), m.group(3));
        return new Tub(written.name(m.group(1)), lean, kilograms, price);
    }
}
