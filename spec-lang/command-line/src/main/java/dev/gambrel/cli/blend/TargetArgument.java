package dev.gambrel.cli.blend;

import dev.gambrel.blends.LeanTarget;
import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.tree.term.Judged;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** How lean a blend is to be, on the command line: "at least 80 % visual", "78 % to 82 % chemical". */
final class TargetArgument {
    private static final String NAME = "--lean";
    private static final Pattern ONE =
            Pattern.compile("(exactly|at least|at most)\\s+" + Written.NUMBER + "\\s*%\\s*,?\\s*" + Written.JUDGED);
    private static final Pattern RANGE =
            Pattern.compile(Written.NUMBER + "\\s*%\\s+to\\s+" + Written.NUMBER + "\\s*%\\s*,?\\s*" + Written.JUDGED);

    private TargetArgument() {}

    static OptionSpec option() {
        return OptionSpec.builder(NAME)
                .paramLabel("LEAN")
                .type(String.class)
                .required(true)
                .description("How lean the blend is to be: \"at least 80 %% visual\", \"exactly 80 %% visual\","
                        + " \"at most 85 %% visual\" or \"78 %% to 82 %% chemical\".")
                .build();
    }

    static LeanTarget target(ParseResult parsed) {
        Written written = new Written(NAME, parsed.matchedOptionValue(NAME, ""), "at least 80 % visual");
        boolean isRange = written.words().contains(" to ");
        return isRange ? between(written, written.by(RANGE)) : one(written, written.by(ONE));
    }

    private static LeanTarget one(Written written, Matcher m) {
        double percent = written.percent(m.group(2));
        Judged judged = Written.judged(m.group(3));
        return switch (m.group(1)) {
            case "exactly" -> LeanTarget.exactly(percent, judged);
            case "at least" -> LeanTarget.atLeast(percent, judged);
            default -> new LeanTarget(judged, 0, percent);
        };
    }

    private static LeanTarget between(Written written, Matcher m) {
        double low = written.percent(m.group(1));
        double high = written.percent(m.group(2));
        if (low > high) {
            throw new WrongUsage(
                    "“" + written.words() + "” runs from the leaner to the fatter; write the lower figure first.");
        }
        return new LeanTarget(Written.judged(m.group(3)), low, high);
    }
}
