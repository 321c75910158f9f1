package dev.gambrel.json.located;

import dev.gambrel.text.NearestName;
import dev.gambrel.text.TradeName;
import java.util.Collection;
import java.util.Optional;
import java.util.stream.Collectors;

/** Words from a file, and the words that were looked for, put into a sentence. */
public final class Shown {
    private static final int LONGEST = 40;

    private Shown() {}

    /**
     * The first words of a text.
     *
     * @param text any text
     * @return at most 40 characters of it, and a mark where more was left out
     */
    public static String of(String text) {
        return text.codePointCount(0, text.length()) <= LONGEST
                ? text
                : text.substring(0, text.offsetByCodePoints(0, LONGEST)) + "…";
    }

    /**
     * Words after one another.
     *
     * @param words any
     * @return each in quotation marks
     */
    public static String list(Collection<String> words) {
        return words.stream().map(word -> "\"" + word + "\"").collect(Collectors.joining(", "));
    }

    /**
     * The word that may be meant.
     *
     * @param text what was written
     * @param known what could have been
     * @return the nearest; nothing if none is near
     */
    public static Optional<String> nearest(String text, Collection<String> known) {
        if (!TradeName.isAcceptable(text)) {
            return Optional.empty();
        }
        return NearestName.of(
                        TradeName.of(text), known.stream().map(TradeName::of).toList())
                .map(TradeName::text);
    }

    /**
     * Asks whether a word was meant.
     *
     * @param meant the word
     * @return a sentence
     */
    public static String question(String meant) {
        return "Was \"" + meant + "\" meant?";
    }
}
