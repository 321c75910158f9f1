package dev.gambrel.references.item;

import java.util.Locale;

/**
 * The number of an item as printed: one, or from one to another where one name stands beside a run of numbers.
 *
 * @param from the first, such as "2240" or "112A"
 * @param to the last; the same where there is one
 */
public record Numbers(String from, String to) {
    /**
     * One number.
     *
     * @param number as printed
     * @return it alone
     */
    public static Numbers of(String number) {
        return new Numbers(number, number);
    }

    /**
     * Whether it is a single number.
     *
     * @return false where several numbers have the name
     */
    public boolean isSingle() {
        return from.equals(to);
    }

    /**
     * Whether a number is this one or within the run.
     *
     * @param number any text; letters may be small
     * @return true if so
     */
    public boolean holds(String number) {
        String capital = number.toUpperCase(Locale.ROOT);
        return isSingle()
                ? from.equals(capital)
                : capital.matches("[0-9]{4}") && from.compareTo(capital) <= 0 && to.compareTo(capital) >= 0;
    }

    @Override
    public String toString() {
        return isSingle() ? from : from + " to " + to;
    }
}
