package dev.gambrel.references.unece;

/** What the animal was fed, field 7a. This list is of cattle. */
public enum Feeding implements FieldValue {
    /** Not specified. */
    NOT_SPECIFIED(0, "not specified"),
    /** Grain fed. */
    GRAIN_FED(1, "grain fed"),
    /** Forage fed. */
    FORAGE_FED(2, "forage fed"),
    /** Exclusively forage fed. */
    EXCLUSIVELY_FORAGE_FED(3, "exclusively forage fed"),
    /** Other. */
    OTHER(9, "other");

    private final int digit;
    private final String words;

    Feeding(int digit, String words) {
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
