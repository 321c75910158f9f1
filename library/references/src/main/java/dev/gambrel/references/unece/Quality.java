package dev.gambrel.references.unece;

/** By whose standards quality is told, field 11. */
public enum Quality implements FieldValue {
    /** Not specified. */
    NOT_SPECIFIED(0, "not specified"),
    /** Official standards. */
    OFFICIAL_STANDARDS(1, "official standards"),
    /** Company standards. */
    COMPANY_STANDARDS(2, "company standards"),
    /** Industry standards. */
    INDUSTRY_STANDARDS(3, "industry standards"),
    /** Other. */
    OTHER(9, "other");

    private final int digit;
    private final String words;

    Quality(int digit, String words) {
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
