package dev.gambrel.batches.sheets;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Severity;

/** What can be found about a list of prices beside what {@link SheetCode} has for any table of parts. */
public enum PriceCode implements Code {
    /** A first word that no list of prices has above its table. */
    UNKNOWN_LINE("G2440", "unknown-line-of-prices", "“{word}” is no line of a list of prices."),
    /** A row without a price. */
    NOT_GIVEN("G2441", "price-not-given", "{part} has no price."),
    /** Less than nothing. */
    NEGATIVE("G2442", "price-below-nothing", "The price is “{value}”; a price is 0 or more."),
    /** A price of something other than a kilogram. */
    NOT_PER_KILOGRAM("G2443", "price-not-per-kilogram", "The price is for one {found}; it must be for one kg."),
    /** A price of what nobody has in the hand. */
    OF_A_LOSS("G2444", "price-of-a-loss", "{part} is a loss, and a loss has no price.");

    private final Kind kind;

    PriceCode(String id, String slug, String pattern) {
        this.kind = new Kind(id, slug, Severity.ERROR, pattern);
    }

    @Override
    public Kind kind() {
        return kind;
    }
}
