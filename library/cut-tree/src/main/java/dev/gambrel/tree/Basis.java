package dev.gambrel.tree;

import java.util.Locale;
import java.util.Optional;

/**
 * What a carcass weight was taken of. Declared from the animal to the cutting block: a step can only go forward.
 */
public enum Basis {
    /** On the hoof. */
    LIVE("live"),
    /** Larder weight of deer: drawn, skin on. */
    IN_SKIN("in skin"),
    /** Dressed, at the end of the line; also called hot. */
    WARM("warm"),
    /** After chilling. */
    COLD("cold");

    private final String words;

    Basis(String words) {
        this.words = words;
    }

    /**
     * The basis in print.
     *
     * @return "live", "in skin", "warm" or "cold"
     */
    public String words() {
        return words;
    }

    /**
     * The basis that somebody wrote; "hot" is warm, "larder" is in skin and "chilled" is cold.
     *
     * @param text one or two words, any case
     * @return the basis, or nothing if it is not one
     */
    public static Optional<Basis> of(String text) {
        return switch (text.toLowerCase(Locale.ROOT)) {
            case "live" -> Optional.of(LIVE);
            case "in skin", "larder" -> Optional.of(IN_SKIN);
            case "warm", "hot" -> Optional.of(WARM);
            case "cold", "chilled" -> Optional.of(COLD);
            default -> Optional.empty();
        };
    }
}
