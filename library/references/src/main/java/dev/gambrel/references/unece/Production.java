package dev.gambrel.references.unece;

/** How the animal was kept, field 6. */
public enum Production implements FieldValue {
    /** Not specified. */
    NOT_SPECIFIED(0, "not specified"),
    /** Intensive. */
    INTENSIVE(1, "intensive"),
    /** Extensive. */
    EXTENSIVE(2, "extensive"),
    /** Organic. */
    ORGANIC(3, "organic"),
    /** Other. */
    OTHER(9, "other");

    private final int digit;
    private final String words;

    Production(int digit, String words) {
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
