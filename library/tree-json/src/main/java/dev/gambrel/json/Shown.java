package dev.gambrel.json;

import dev.gambrel.text.NearestName;
import dev.gambrel.text.TradeName;
import java.util.Collection;
import java.util.Optional;
import java.util.stream.Collectors;

/** Words from a file, and the words that were looked for, put into a sentence. */
final class Shown {
    private static final int LONGEST = 40;

    private Shown() {}

    static String of(String text) {
        return text.codePointCount(0, text.length()) <= LONGEST
                ? text
                : text.substring(0, text.offsetByCodePoints(0, LONGEST)) + "…";
    }

    static String list(Collection<String> words) {
        return words.stream().map(word -> "\"" + word + "\"").collect(Collectors.joining(", "));
    }

    static Optional<String> nearest(String text, Collection<String> known) {
        if (!TradeName.isAcceptable(text)) {
            return Optional.empty();
        }
        return NearestName.of(
                        TradeName.of(text), known.stream().map(TradeName::of).toList())
                .map(TradeName::text);
    }

    static String question(String meant) {
        return "Was \"" + meant + "\" meant?";
    }
}
