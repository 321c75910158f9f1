package dev.gambrel.references.unece;

import dev.gambrel.references.source.Citation;

/** What stands in one field of one code. */
public sealed interface Entry {
    /**
     * The digit.
     *
     * @return 0 to 9
     */
    int digit();

    /**
     * A digit whose meaning is held.
     *
     * @param value what it means
     * @param citation where that stands
     */
    record Meant(FieldValue value, Citation citation) implements Entry {
        @Override
        public int digit() {
            return value.digit();
        }
    }

    /**
     * A digit that is carried as it is: no list of its species is held.
     *
     * @param digit 0 to 9
     */
    record NotVerified(int digit) implements Entry {}
}
