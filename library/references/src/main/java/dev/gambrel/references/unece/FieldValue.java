package dev.gambrel.references.unece;

/** What a digit of a field means, by the list of cattle of 2007. */
public sealed interface FieldValue
        permits Category,
                Conformity,
                FatThickness,
                Feeding,
                Packing,
                PostSlaughter,
                Production,
                Quality,
                Refrigeration,
                Slaughter,
                WeightRange {
    /**
     * The digit that says it.
     *
     * @return 0 to 9
     */
    int digit();

    /**
     * In print.
     *
     * @return for example "vacuum packed"
     */
    String words();
}
