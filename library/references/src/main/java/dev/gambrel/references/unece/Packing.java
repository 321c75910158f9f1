package dev.gambrel.references.unece;

/** How it is packed, field 13. */
public enum Packing implements FieldValue {
    /** Not specified. */
    NOT_SPECIFIED(0, "not specified"),
    /** Carcases, half carcases, quarters - without packing. */
    CARCASES_UNPACKED(1, "carcases, half carcases, quarters - without packing"),
    /** Carcases, half carcases, quarters - with packing. */
    CARCASES_PACKED(2, "carcases, half carcases, quarters - with packing"),
    /** Cuts - individually wrapped. */
    INDIVIDUALLY_WRAPPED(3, "cuts - individually wrapped"),
    /** Cuts - bulk packaged. */
    BULK(4, "cuts - bulk packaged"),
    /** Cuts - vacuum packed. */
    VACUUM(5, "cuts - vacuum packed"),
    /** Cuts - modified atmosphere packaging. */
    MODIFIED_ATMOSPHERE(6, "cuts - modified atmosphere packaging"),
    /** Other. */
    OTHER(9, "other");

    private final int digit;
    private final String words;

    Packing(int digit, String words) {
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
