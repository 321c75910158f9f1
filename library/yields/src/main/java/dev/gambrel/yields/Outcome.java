package dev.gambrel.yields;

import dev.gambrel.tree.Stream;

/** What becomes of weight in the end. Together the outcomes are all that was weighed. */
public enum Outcome {
    /** Products and saleable streams. */
    SALEABLE("saleable"),
    /** Sold or used, not as meat. */
    BY_PRODUCT("by-product"),
    /** Thrown away. */
    WASTE("waste"),
    /** Gone: drip, saw dust, evaporation, chill shrink. */
    LOSS("loss"),
    /** Nobody has said where it goes. */
    NOT_STATED("home not stated");

    private final String words;

    Outcome(String words) {
        this.words = words;
    }

    /**
     * In print.
     *
     * @return for example "by-product"
     */
    public String words() {
        return words;
    }

    /**
     * What becomes of a stream.
     *
     * @param kind the stream's kind
     * @return its outcome
     */
    public static Outcome of(Stream.Kind kind) {
        return switch (kind) {
            case SALEABLE -> SALEABLE;
            case BY_PRODUCT -> BY_PRODUCT;
            case WASTE -> WASTE;
        };
    }
}
