package dev.gambrel.cli.conform;

import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** What of the house's is meant by something of the buyer's, on the command line: "rack = best end / rack". */
final class MatchArgument {
    private static final String NAME = "--match";

    private MatchArgument() {}

    static OptionSpec option() {
        return OptionSpec.builder(NAME)
                .paramLabel("BUYER PATH = HOUSE PATH")
                .type(List.class)
                .auxiliaryTypes(String.class)
                .arity("1")
                .description("What of the house's is meant, where names alone do not tell, such as"
                        + " \"topside = leg / topside\"; may be given for several.")
                .build();
    }

    static Map<TreePath, TreePath> matches(ParseResult parsed) {
        List<String> written = parsed.matchedOptionValue(NAME, List.of());
        Map<TreePath, TreePath> matches = new LinkedHashMap<>();
        for (String match : written) {
            String[] sides = match.split("=", -1);
            if (sides.length != 2) {
                throw wrong(match);
            }
            if (matches.put(path(sides[0], match), path(sides[1], match)) != null) {
                throw new WrongUsage("“" + sides[0].strip() + "” is matched twice; say once what is meant.");
            }
        }
        return matches;
    }

    private static TreePath path(String side, String match) {
        List<TradeName> names = new ArrayList<>();
        for (String name : side.split("/", -1)) {
            if (!TradeName.isAcceptable(name.strip())) {
                throw wrong(match);
            }
            names.add(TradeName.of(name.strip()));
        }
        return new TreePath(names);
    }

    private static WrongUsage wrong(String match) {
        return new WrongUsage("“" + match
                + "” cannot be read; write it such as \"topside = leg / topside\", the buyer's path first.");
    }
}
