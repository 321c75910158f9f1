package dev.gambrel.references.unece;

/** How cold a cut is kept, field 4. The temperatures, from memory: chilled -1.5 °C to 7 °C, frozen at or below -12 °C, deep-frozen at or below -18 °C. */
public enum Refrigeration implements FieldValue {
    /** Not specified. */
    NOT_SPECIFIED(0, "not specified"),
    /** Chilled. */
    CHILLED(1, "chilled"),
    /** Frozen. */
    FROZEN(2, "frozen"),
    /** Deep-frozen. */
    DEEP_FROZEN(3, "deep-frozen"),
    /** Other. */
    OTHER(9, "other");

    private final int digit;
    private final String words;

    Refrigeration(int digit, String words) {
        this.digit = digit;
        this.words = words;
    }

    @Override
    public int digit() {
        return digit;
    }

    @Override
    public String words() {
        return words;
    }
}
