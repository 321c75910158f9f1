package dev.gambrel.cli.compare;

import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.yields.comparison.Effect;
import java.util.Arrays;
import java.util.EnumSet;
import java.util.Set;
import java.util.stream.Collectors;
import picocli.CommandLine.Model.OptionSpec;
import picocli.CommandLine.ParseResult;

/** Which effects do not count for how the program ends. */
final class AcceptArgument {
    private static final String NAME = "--accept";

    private AcceptArgument() {}

    static OptionSpec option() {
        return OptionSpec.builder(NAME)
                .paramLabel("EFFECTS")
                .type(String.class)
                .description("End with 0 though these are found, such as \"loosens, adds\"; rewording never counts.")
                .build();
    }

    static Set<Effect> accepted(ParseResult parsed) {
        Set<Effect> accepted = EnumSet.of(Effect.REWORDS);
        String words = parsed.matchedOptionValue(NAME, "");
        if (!words.isBlank()) {
            for (String word : words.split(",", -1)) {
                accepted.add(effect(word.strip()));
            }
        }
        return accepted;
    }

    private static Effect effect(String word) {
        return Arrays.stream(Effect.values())
                .filter(effect -> effect.words().equalsIgnoreCase(word))
                .findFirst()
                .orElseThrow(() -> new WrongUsage("“" + word + "” is no effect of a change; there are "
                        + Arrays.stream(Effect.values()).map(Effect::words).collect(Collectors.joining(", ")) + "."));
    }
}
