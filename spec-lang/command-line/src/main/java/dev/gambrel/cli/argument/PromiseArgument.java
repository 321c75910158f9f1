package dev.gambrel.cli.argument;

import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.yields.Doubt;
import dev.gambrel.yields.portions.MeanDoubt;
import dev.gambrel.yields.portions.Promise;
import dev.gambrel.yields.portions.SeveralCarcasses;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** What somebody wants to promise, on the command line: "95 % from 40 carcasses". */
public final class PromiseArgument {
    private static final String PROMISE = "--promise";
    private static final Pattern FORM =
            Pattern.compile("\\s*([0-9]{1,2}(?:\\.[0-9]{1,10})?)\\s*%\\s*from\\s+([0-9]{1,7})\\s+carcass(?:es)?\\s*");

    private PromiseArgument() {}

    /**
     * Takes what is to be promised.
     *
     * @return the option
     */
    public static OptionSpec option() {
        return OptionSpec.builder(PROMISE)
                .paramLabel("SURE from N carcasses")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .arity("1")
                .description("How many portions can be promised, and how surely, such as \"95 %% from 40 carcasses\";"
                        + " may be given several times.")
                .build();
    }

    /**
     * All that is to be promised.
     *
     * @param parsed what stands on the command line
     * @param doubt how sure the mean shares are
     * @return in the order in which they were written
     * @throws WrongUsage if one cannot be read, or is out of its range
     */
    public static List<Promise> promises(ParseResult parsed, Doubt doubt) {
        List<String> written = parsed.matchedOptionValue(PROMISE, List.of());
        MeanDoubt means =
                doubt instanceof Doubt.FromTests from ? new MeanDoubt.FromTests(from.tests()) : MeanDoubt.NONE;
        return written.stream().map(each -> promise(each, means)).toList();
    }

    static Promise promise(String written, MeanDoubt means) {
        Matcher matcher = FORM.matcher(written);
        if (!matcher.matches()) {
            throw new WrongUsage("“" + written + "” cannot be read; write it such as \"95 % from 40 carcasses\".");
        }
        double certainty = Double.parseDouble(matcher.group(1)) / 100;
        int number = Integer.parseInt(matcher.group(2));
        if (certainty == 0) {
            throw new WrongUsage("“" + written + "” promises nothing; say how sure it is to be, such as 95 %.");
        } else if (number < 1 || number > SeveralCarcasses.MOST) {
            throw new WrongUsage("“" + written + "” is from " + number + " carcasses; from 1 to "
                    + SeveralCarcasses.MOST + " can be worked with.");
        }
        return new Promise(certainty, new SeveralCarcasses(number, means));
    }
}
