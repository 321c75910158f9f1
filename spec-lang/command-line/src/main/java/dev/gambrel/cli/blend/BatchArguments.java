package dev.gambrel.cli.blend;

import dev.gambrel.blends.BatchOrder;
import dev.gambrel.blends.LeanTarget;
import dev.gambrel.blends.Limit;
import dev.gambrel.blends.Promise;
import dev.gambrel.blends.Tub;
import dev.gambrel.blends.Tubs;
import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.text.TradeName;
import java.util.HashSet;
import java.util.List;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** A batch of a given weight, on the command line: how heavy, what limits it keeps, how surely it is lean enough. */
final class BatchArguments {
    private static final String BATCH = "--batch";
    private static final String LIMIT = "--limit";
    private static final String PROMISE = "--promise";
    private static final String LIMIT_EXAMPLE = "pork at most 25 % of beef";
    private static final Pattern WEIGHT = Pattern.compile(Written.NUMBER + "\\s*([a-z]+)");
    private static final Pattern CHANCE = Pattern.compile(Written.NUMBER + "\\s*%");
    private static final Pattern PART_OF =
            Pattern.compile("(.+?)\\s+at most\\s+" + Written.NUMBER + "\\s*%\\s+of\\s+(.+)");
    private static final Pattern SO_MUCH =
            Pattern.compile("(.+?)\\s+(at most|at least)\\s+" + Written.NUMBER + "\\s*([a-z]+)");

    private BatchArguments() {}

    static List<OptionSpec> options() {
        return List.of(
                OptionSpec.builder(BATCH)
                        .paramLabel("WEIGHT")
                        .type(String.class)
                        .description(
                                "The weight of the batch, such as \"100 kg\": the cheapest is told, or without prices"
                                        + " the one that spares the leanest meat. Without it, the largest batch.")
                        .build(),
                OptionSpec.builder(LIMIT)
                        .paramLabel("LIMIT")
                        .type(List.class)
                        .auxiliaryTypes(String.class)
                        .arity("1")
                        .description("With --batch: what tubs may make up in it, such as \"flank at most 20 kg\","
                                + " \"lot 7 at least 15 kg\" or \"pork at most 25 %% of beef and veal\".")
                        .build(),
                OptionSpec.builder(PROMISE)
                        .paramLabel("CHANCE")
                        .type(String.class)
                        .description(
                                "With --batch: how surely it is at least as lean as --lean asks, such as \"95 %%\"; on"
                                        + " average if not said. Every tub then needs a spread.")
                        .build());
    }

    static boolean isGiven(ParseResult parsed) {
        boolean given = parsed.hasMatchedOption(BATCH);
        if (!given && (parsed.hasMatchedOption(LIMIT) || parsed.hasMatchedOption(PROMISE))) {
            throw new WrongUsage("Limits and promises are kept in a batch of a given weight; write " + BATCH
                    + " with it, such as " + BATCH + " \"100 kg\".");
        }
        return given;
    }

    static BatchOrder order(ParseResult parsed, Tubs tubs, LeanTarget target) {
        Written batch = new Written(BATCH, parsed.matchedOptionValue(BATCH, ""), "100 kg");
        Matcher m = batch.by(WEIGHT);
        List<String> written = parsed.matchedOptionValue(LIMIT, List.of());
        List<Limit> limits = written.stream().map(words -> limit(words, tubs)).toList();
        return new BatchOrder(tubs, target, batch.kilograms(m.group(1), m.group(2)), limits, promise(parsed));
    }

    private static Limit limit(String words, Tubs tubs) {
        Written written = new Written(LIMIT, words, LIMIT_EXAMPLE);
        Matcher part = PART_OF.matcher(words.strip());
        if (part.matches()) {
            double of = Double.parseDouble(part.group(2)) / 100;
            return Limit.atMostPartOf(
                    words, named(written, part.group(1), tubs), of, named(written, part.group(3), tubs));
        }
        Matcher m = written.by(SO_MUCH);
        Set<TradeName> names = named(written, m.group(1), tubs);
        double kilograms = written.kilograms(m.group(3), m.group(4));
        return m.group(2).equals("at most")
                ? Limit.atMost(words, names, kilograms)
                : Limit.atLeast(words, names, kilograms);
    }

    private static Set<TradeName> named(Written written, String text, Tubs tubs) {
        Set<TradeName> names = new HashSet<>(written.names(text));
        List<TradeName> known = tubs.all().stream().map(Tub::name).toList();
        for (TradeName name : names) {
            if (!known.contains(name)) {
                throw new WrongUsage("“" + written.words() + "” speaks of “" + name + "”, and there is no such tub.");
            }
        }
        return names;
    }

    private static Promise promise(ParseResult parsed) {
        if (!parsed.hasMatchedOption(PROMISE)) {
            return Promise.ON_AVERAGE;
        }
        Written written = new Written(PROMISE, parsed.matchedOptionValue(PROMISE, ""), "95 %");
        double chance = Double.parseDouble(written.by(CHANCE).group(1)) / 100;
        if (chance < 0.5 || chance >= 1) {
            throw new WrongUsage("“" + written.words()
                    + "” cannot be promised; it is from 50 %, which is on average, to less" + " than 100 %.");
        }
        return new Promise.At(chance);
    }
}
