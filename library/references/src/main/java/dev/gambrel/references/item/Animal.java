package dev.gambrel.references.item;

import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * An animal with its two digits in UNECE meat codes.
 *
 * <p>10 to 70 stand in the bovine edition of 2007, seen as quoted elsewhere; 71 to 80 in the edition of 2016 on edible co-products,
 * seen. The list is not complete: deer and edible co-products have digits that were not found.
 */
public enum Animal {
    /** Cattle. */
    BEEF("10", "beef"),
    /** Calves. */
    VEAL("11", "veal"),
    /** Pigs. */
    PORK("30", "pork"),
    /** Sheep of any age. */
    SHEEP("40", "sheep"),
    /** Goats. */
    GOAT("50", "goat"),
    /** Llamas. */
    LLAMA("60", "llama"),
    /** Alpacas. */
    ALPACA("61", "alpaca"),
    /** Chickens. */
    CHICKEN("70", "chicken"),
    /** Turkeys. */
    TURKEY("71", "turkey"),
    /** Ducks. */
    DUCK("72", "duck"),
    /** Geese. */
    GOOSE("73", "goose"),
    /** Rabbits. */
    RABBIT("74", "rabbit"),
    /** Horses. */
    HORSE("80", "horse");

    private final String digits;
    private final String word;

    Animal(String digits, String word) {
        this.digits = digits;
        this.word = word;
    }

    /**
     * Its species in a UNECE meat code.
     *
     * @return two digits
     */
    public String digits() {
        return digits;
    }

    /**
     * In print.
     *
     * @return for example "sheep"
     */
    public String word() {
        return word;
    }

    /**
     * The animal of a species in a UNECE meat code.
     *
     * @param digits two digits
     * @return the animal, or nothing if the list does not have it
     */
    public static Optional<Animal> ofDigits(String digits) {
        return Stream.of(values())
                .filter(animal -> animal.digits.equals(digits))
                .findFirst();
    }

    /**
     * The animal that somebody wrote.
     *
     * @param word a word as in print, whatever the case
     * @return the animal, or nothing if it is none
     */
    public static Optional<Animal> of(String word) {
        return Stream.of(values())
                .filter(animal -> animal.word.equalsIgnoreCase(word))
                .findFirst();
    }

    /**
     * All of them.
     *
     * @return "10 beef, 11 veal" and so on
     */
    public static String list() {
        return Stream.of(values())
                .map(animal -> animal.digits + " " + animal.word)
                .collect(Collectors.joining(", "));
    }
}
