package dev.gambrel.references.unece;

/** Age and sex of cattle, field 5. Each species has its own list; this one is of cattle. */
public enum Category implements FieldValue {
    /** Not specified. */
    NOT_SPECIFIED(0, "not specified"),
    /** Intact male. */
    INTACT_MALE(1, "intact male"),
    /** Young intact male. */
    YOUNG_INTACT_MALE(2, "young intact male"),
    /** Steer. */
    STEER(3, "steer"),
    /** Heifer. */
    HEIFER(4, "heifer"),
    /** Steer and/or heifer. */
    STEER_AND_OR_HEIFER(5, "steer and/or heifer"),
    /** Cow. */
    COW(6, "cow"),
    /** Young bovine. */
    YOUNG_BOVINE(7, "young bovine"),
    /** Other. */
    OTHER(9, "other");

    private final int digit;
    private final String words;

    Category(int digit, String words) {
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
