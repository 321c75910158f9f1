package dev.gambrel.references.unece;

/** What a third party assesses, field 14. */
public enum Conformity implements FieldValue {
    /** Not specified. */
    NOT_SPECIFIED(0, "not specified"),
    /** Quality/grade/classification. */
    QUALITY(1, "quality/grade/classification"),
    /** Trade standard. */
    TRADE_STANDARD(2, "trade standard"),
    /** Animal/batch identification. */
    IDENTIFICATION(3, "animal/batch identification"),
    /** Quality + trade standard. */
    QUALITY_AND_TRADE_STANDARD(4, "quality + trade standard"),
    /** Quality + animal/batch identification. */
    QUALITY_AND_IDENTIFICATION(5, "quality + animal/batch identification"),
    /** Trade standard + animal/batch identification. */
    TRADE_STANDARD_AND_IDENTIFICATION(6, "trade standard + animal/batch identification"),
    /** Quality + trade standard + animal/batch identification. */
    QUALITY_AND_TRADE_STANDARD_AND_IDENTIFICATION(7, "quality + trade standard + animal/batch identification"),
    /** Other. */
    OTHER(9, "other");

    private final int digit;
    private final String words;

    Conformity(int digit, String words) {
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
