package dev.gambrel.references.unece;

/** What is done after slaughter, field 9. */
public enum PostSlaughter implements FieldValue {
    /** Not specified. */
    NOT_SPECIFIED(0, "not specified"),
    /** Specified: it must stand in words beside the code. */
    SPECIFIED(1, "specified: it must stand in words beside the code");

    private final int digit;
    private final String words;

    PostSlaughter(int digit, String words) {
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
