package dev.gambrel.references.unece;

/** How the animal was slaughtered, field 8. */
public enum Slaughter implements FieldValue {
    /** Not specified. */
    NOT_SPECIFIED(0, "not specified"),
    /** Conventional. */
    CONVENTIONAL(1, "conventional"),
    /** Kosher. */
    KOSHER(2, "kosher"),
    /** Halal. */
    HALAL(3, "halal"),
    /** Other. */
    OTHER(9, "other");

    private final int digit;
    private final String words;

    Slaughter(int digit, String words) {
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
