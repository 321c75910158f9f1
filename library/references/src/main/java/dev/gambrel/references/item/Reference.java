package dev.gambrel.references.item;

/**
 * A number that somebody refers to.
 *
 * @param scheme who gives the number
 * @param number as written, such as "2240"; letters may be small
 * @param edition such as "2007"; empty if any will do
 */
public record Reference(Scheme scheme, String number, String edition) {
    /**
     * A number of any edition.
     *
     * @param scheme who gives the number
     * @param number as written
     * @return the reference
     */
    public static Reference of(Scheme scheme, String number) {
        return new Reference(scheme, number, "");
    }

    /**
     * Whether an item is meant.
     *
     * @param item any item
     * @return true if scheme and number are the same and the edition does not differ
     */
    boolean means(Item item) {
        return edition.isEmpty() || item.citation().edition().equalsIgnoreCase(edition);
    }

    @Override
    public String toString() {
        return scheme.word() + " " + number + (edition.isEmpty() ? "" : " of " + edition);
    }
}
