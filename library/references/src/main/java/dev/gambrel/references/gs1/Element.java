package dev.gambrel.references.gs1;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import java.math.BigDecimal;
import java.util.Optional;

/**
 * One pair of an element string.
 *
 * @param identifier the kind of value
 * @param digits the identifier as written, such as 3103
 * @param value the value as written
 */
public record Element(Identifier identifier, String digits, String value) {
    /**
     * Checks that the parts fit.
     *
     * @throws IllegalArgumentException if the digits are of another identifier, or the value is not of its form
     */
    public Element {
        if (!identifier.isWritten(digits) || !identifier.form().fits(value)) {
            throw new IllegalArgumentException("not an element: (" + digits + ")");
        }
    }

    /**
     * The decimals that the identifier tells.
     *
     * @return 0 where it tells none
     */
    public int decimals() {
        return identifier.isFamily() ? digits.charAt(digits.length() - 1) - '0' : 0;
    }

    /**
     * What it weighs, exactly and with all its decimals.
     *
     * @return a net or gross weight in the unit of the identifier; nothing where it is no weight
     */
    public Optional<Quantity> weight() {
        if (identifier.form() != Form.MEASURE) {
            return Optional.empty();
        }
        Unit unit = identifier.title().endsWith("(lb)") ? Unit.POUND : Unit.KILOGRAM;
        return Optional.of(new Quantity(new BigDecimal(value).movePointLeft(decimals()), unit));
    }

    /**
     * The day that it tells; of a first and a last day the first.
     *
     * @return the day; nothing where it is none
     */
    public Optional<Gs1Date> date() {
        return switch (identifier.form()) {
            case DATE, DATE_OPEN, DATE_AND_TIME, DATES -> Gs1Date.of(value.substring(0, 6));
            default -> Optional.empty();
        };
    }

    @Override
    public String toString() {
        return "(" + digits + ")" + value;
    }
}
