package dev.gambrel.references.item;

import java.util.List;
import java.util.Optional;

/** Who gives the numbers. The same digits mean other cuts in another scheme. */
public enum Scheme {
    /** Standards of the United Nations Economic Commission for Europe: four digits within a species. */
    UNECE("UNECE", List.of("UN/ECE")),
    /** Institutional Meat Purchase Specifications of the United States: three or four digits, with a letter or without. */
    IMPS("IMPS", List.of()),
    /** The Handbook of Australian Meat: four digits. */
    AUSTRALIAN_HANDBOOK("Australian", List.of("Handbook", "AUS"));

    private final String word;
    private final List<String> others;

    Scheme(String word, List<String> others) {
        this.word = word;
        this.others = others;
    }

    /**
     * In print.
     *
     * @return one word
     */
    public String word() {
        return word;
    }

    /**
     * The scheme that somebody wrote.
     *
     * @param word a word, whatever the case
     * @return the scheme, or nothing if it is none
     */
    public static Optional<Scheme> of(String word) {
        for (Scheme scheme : values()) {
            if (scheme.word.equalsIgnoreCase(word) || scheme.others.stream().anyMatch(word::equalsIgnoreCase)) {
                return Optional.of(scheme);
            }
        }
        return Optional.empty();
    }
}
