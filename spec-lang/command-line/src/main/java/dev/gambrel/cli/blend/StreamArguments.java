package dev.gambrel.cli.blend;

import dev.gambrel.blends.LeanTarget;
import dev.gambrel.blends.Price;
import dev.gambrel.cli.argument.FileArgument;
import dev.gambrel.cli.argument.MeasureArgument;
import dev.gambrel.cli.argument.WeightArgument;
import dev.gambrel.cli.argument.WorkArgument;
import dev.gambrel.cli.file.SpecFileReader;
import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.text.TradeName;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.estimate.Measurements;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** Which streams of a specification are blended, and of how many carcasses. */
final class StreamArguments {
    private static final String FROM = "--from";
    private static final String CARCASSES = "--carcasses";
    private static final String PRICE = "--price";
    private static final Pattern MONEY = Pattern.compile("(.+?)\\s*=\\s*" + Written.NUMBER + "\\s+an?\\s+([a-z]+)");
    private static final Pattern COUNT = Pattern.compile("[1-9][0-9]{0,5}");

    private StreamArguments() {}

    static List<OptionSpec> options() {
        return List.of(
                OptionSpec.builder(FROM)
                        .paramLabel("STREAM")
                        .type(List.class)
                        .auxiliaryTypes(String.class)
                        .arity("1")
                        .description(
                                "A stream of the specification that may go in; every saleable one if none is named.")
                        .build(),
                OptionSpec.builder(CARCASSES)
                        .paramLabel("N")
                        .type(String.class)
                        .description(
                                "Of how many carcasses alike the streams are; 1 if not said. Their lean is taken to stray"
                                        + " as that of one.")
                        .build(),
                OptionSpec.builder(PRICE)
                        .paramLabel("PRICE")
                        .type(List.class)
                        .auxiliaryTypes(String.class)
                        .arity("1")
                        .description("What a stream would fetch as it is, such as \"mince = 3.20 a kg\".")
                        .build());
    }

    static Optional<StreamTubs> tubs(ParseResult parsed, LeanTarget target, List<Diagnostic> findings) {
        int carcasses = count(parsed.matchedOptionValue(CARCASSES, "1"));
        List<String> written = parsed.matchedOptionValue(FROM, List.of());
        List<TradeName> wanted = written.stream()
                .map(words -> new Written(FROM, words, "mince").name(words))
                .toList();
        Result<SpecFileReader.Read> read = SpecFileReader.read(FileArgument.file(parsed));
        findings.addAll(read.diagnostics());
        return read.value()
                .flatMap(spec -> yields(spec, parsed, findings))
                .map(yields -> StreamTubs.of(yields, carcasses, wanted, target.judged())
                        .at(prices(parsed)));
    }

    private static Map<TradeName, Price> prices(ParseResult parsed) {
        List<String> written = parsed.matchedOptionValue(PRICE, List.of());
        Map<TradeName, Price> prices = new HashMap<>();
        for (String words : written) {
            Written price = new Written(PRICE, words, "mince = 3.20 a kg");
            Matcher m = price.by(MONEY);
            prices.put(price.name(m.group(1)), price.price(m.group(2), m.group(3)));
        }
        return prices;
    }

    private static Optional<ExpectedYields> yields(
            SpecFileReader.Read spec, ParseResult parsed, List<Diagnostic> findings) {
        Yields ready = Yields.of(spec.tree(), WorkArgument.working(parsed));
        Measurements measured = MeasureArgument.measurements(parsed);
        Result<ExpectedYields> result = WeightArgument.weight(parsed)
                .map(weight -> ready.forCarcass(weight, measured))
                .orElseGet(() -> ready.forTypicalCarcass(measured));
        findings.addAll(result.diagnostics());
        return result.value();
    }

    private static int count(String words) {
        if (!COUNT.matcher(words).matches()) {
            throw new WrongUsage("“" + words + "” is not a number of carcasses from 1 to 999999.");
        }
        return Integer.parseInt(words);
    }
}
