package dev.gambrel.references.unece;

import dev.gambrel.references.item.Animal;
import dev.gambrel.references.item.Meaning;
import dev.gambrel.references.item.PublishedItems;
import dev.gambrel.references.item.Reference;
import dev.gambrel.references.item.Scheme;
import dev.gambrel.references.source.Certainty;
import dev.gambrel.references.source.Citation;
import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;

/**
 * A UNECE meat code of 20 digits, taken apart. It holds only digits that may stand where they stand.
 *
 * <p>Layout: species in positions 1 and 2, cut in 3 to 6, then one digit for each {@link Field}; 7, 8 and 13 are not used and 0.
 * UNECE Standard Bovine Meat, Carcases and Cuts, 2007, section 4.1, seen as quoted elsewhere. For other species than cattle the fields
 * whose lists differ are carried and not told.
 *
 * @param animal the species
 * @param cut four digits; whether the tables hold it is another question, see {@link #meaning}
 * @param digits one for each field, 0 to 9
 */
public record MeatCode(Animal animal, String cut, Map<Field, Integer> digits) {
    /** How many digits a code has. */
    public static final int LENGTH = 20;

    private static final Citation CATTLE =
            new Citation("UNECE Standard Bovine Meat, Carcases and Cuts", "2007", Certainty.SEEN_QUOTED);
    private static final Citation OTHERS = new Citation(
            "UNECE meat standards, the list of cattle said to hold for all", "2007", Certainty.FROM_MEMORY);

    /**
     * Copies the digits; a field that is not given is 0, not specified.
     *
     * @throws IllegalArgumentException if the cut is not four digits, or a digit is not given out
     */
    public MeatCode {
        if (!cut.matches("[0-9]{4}")) {
            throw new IllegalArgumentException("a cut has four digits");
        }
        Map<Field, Integer> all = new EnumMap<>(Field.class);
        for (Field field : Field.values()) {
            int digit = digits.getOrDefault(field, 0);
            if (!isGivenOut(animal, field, digit)) {
                throw new IllegalArgumentException(field.words() + " has no value " + digit);
            }
            all.put(field, digit);
        }
        digits = java.util.Collections.unmodifiableMap(all);
    }

    /** Of other species any digit may be; what is not held is not wrong. */
    static boolean isGivenOut(Animal animal, Field field, int digit) {
        return digit >= 0
                && digit <= 9
                && (animal != Animal.BEEF || field.value(digit).isPresent());
    }

    /**
     * What stands in a field.
     *
     * @param field the field
     * @return its value, or the bare digit where none is verified for the species
     */
    public Entry entry(Field field) {
        int digit = digits.get(field);
        boolean isCattle = animal == Animal.BEEF;
        Optional<Entry> meant = field.value(digit)
                .filter(value -> isCattle || field.isCommon())
                .map(value -> new Entry.Meant(value, isCattle ? CATTLE : OTHERS));
        return meant.orElseGet(() -> new Entry.NotVerified(digit));
    }

    /**
     * What a field says, if its list is verified or said to be common to all species.
     *
     * @param type the kind of value
     * @param field the field that has such values
     * @param <T> the kind of value
     * @return the value; nothing where the digit is carried only
     */
    public <T extends FieldValue> Optional<T> value(Class<T> type, Field field) {
        return entry(field) instanceof Entry.Meant meant && type.isInstance(meant.value())
                ? Optional.of(type.cast(meant.value()))
                : Optional.empty();
    }

    /**
     * What the cut is.
     *
     * @return what the tables hold of its number for the animal
     */
    public Meaning meaning() {
        return PublishedItems.lookUp(Reference.of(Scheme.UNECE, cut), animal);
    }

    /**
     * The code as it is written.
     *
     * @return 20 digits
     */
    public String encode() {
        char[] code = (animal.digits() + cut + "0".repeat(LENGTH - 6)).toCharArray();
        digits.forEach((field, digit) -> code[field.position() - 1] = (char) ('0' + digit));
        return new String(code);
    }

    @Override
    public String toString() {
        return encode();
    }
}
