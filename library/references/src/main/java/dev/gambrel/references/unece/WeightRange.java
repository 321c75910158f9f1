package dev.gambrel.references.unece;

/** Whether the weight of pieces is specified, field 12. */
public enum WeightRange implements FieldValue {
    /** Not specified. */
    NOT_SPECIFIED(0, "not specified"),
    /** Specified: the range must stand beside the code. */
    SPECIFIED(1, "specified: the range must stand beside the code");

    private final int digit;
    private final String words;

    WeightRange(int digit, String words) {
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
