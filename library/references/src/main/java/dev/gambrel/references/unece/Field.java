package dev.gambrel.references.unece;

import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;

/**
 * A field of the code that has one digit, in their order.
 *
 * <p>Layout and lists: UNECE Standard Bovine Meat, Carcases and Cuts, 2007, chapter 3, seen as quoted elsewhere.
 */
public enum Field {
    /** Field 4. */
    REFRIGERATION("refrigeration", 9, true, Refrigeration.values()),
    /** Field 5. */
    CATEGORY("category", 10, false, Category.values()),
    /** Field 6. */
    PRODUCTION("production system", 11, true, Production.values()),
    /** Field 7a. */
    FEEDING("feeding system", 12, false, Feeding.values()),
    /** Field 8. */
    SLAUGHTER("slaughter system", 14, true, Slaughter.values()),
    /** Field 9. */
    POST_SLAUGHTER("post-slaughter system", 15, true, PostSlaughter.values()),
    /** Field 10. */
    FAT("fat thickness", 16, false, FatThickness.values()),
    /** Field 11. */
    QUALITY("quality system", 17, true, Quality.values()),
    /** Field 12. */
    WEIGHT_RANGE("weight range", 18, true, WeightRange.values()),
    /** Field 13. */
    PACKING("packing", 19, true, Packing.values()),
    /** Field 14. */
    CONFORMITY("conformity assessment", 20, true, Conformity.values());

    private final String words;
    private final int position;
    private final boolean common;
    private final List<FieldValue> values;

    Field(String words, int position, boolean common, FieldValue... values) {
        this.words = words;
        this.position = position;
        this.common = common;
        this.values = List.of(values);
    }

    /**
     * In print.
     *
     * @return for example "fat thickness"
     */
    public String words() {
        return words;
    }

    /**
     * Where its digit stands.
     *
     * @return counted from 1
     */
    public int position() {
        return position;
    }

    /**
     * Whether other species are said to have the same list; from memory.
     *
     * @return false for what is known to differ from species to species
     */
    public boolean isCommon() {
        return common;
    }

    /**
     * The list of cattle.
     *
     * @return in the order of the digits
     */
    public List<FieldValue> choices() {
        return values;
    }

    /**
     * What a digit means in the list of cattle.
     *
     * @param digit 0 to 9
     * @return the value, or nothing where the digit is not given out
     */
    public Optional<FieldValue> value(int digit) {
        return values.stream().filter(value -> value.digit() == digit).findFirst();
    }

    /**
     * The whole list in words.
     *
     * @return "0 not specified, 1 chilled" and so on
     */
    public String list() {
        return values.stream().map(value -> value.digit() + " " + value.words()).collect(Collectors.joining(", "));
    }
}
