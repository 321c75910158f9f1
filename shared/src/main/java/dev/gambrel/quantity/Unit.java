package dev.gambrel.quantity;

import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/**
 * A unit that may be written, with its exact size in the unit in which its dimension is compared.
 *
 * <p>Pound and ounce are avoirdupois, 0.45359237 kg exactly and a sixteenth of that; the inch is 25.4 mm exactly
 * (international yard and pound agreement of 1959, as in NIST Special Publication 811, appendix B).
 */
public enum Unit {
    /** Kilogram. */
    KILOGRAM("kg", Dimension.WEIGHT, "1", "0", "kilogram", "kilograms", "kilo", "kilos"),
    /** Gram. */
    GRAM("g", Dimension.WEIGHT, "0.001", "0", "gram", "grams", "gramme", "grammes"),
    /** Avoirdupois pound. */
    POUND("lb", Dimension.WEIGHT, "0.45359237", "0", "lbs", "pound", "pounds"),
    /** Avoirdupois ounce. */
    OUNCE("oz", Dimension.WEIGHT, "0.028349523125", "0", "ounce", "ounces"),
    /** Millimetre. */
    MILLIMETRE("mm", Dimension.LENGTH, "1", "0", "millimetre", "millimetres"),
    /** Centimetre. */
    CENTIMETRE("cm", Dimension.LENGTH, "10", "0", "centimetre", "centimetres"),
    /** Inch. */
    INCH("in", Dimension.LENGTH, "25.4", "0", "inch", "inches"),
    /** Square millimetre. */
    SQUARE_MILLIMETRE("mm²", Dimension.AREA, "1", "0", "mm2"),
    /** Square centimetre. */
    SQUARE_CENTIMETRE("cm²", Dimension.AREA, "100", "0", "cm2"),
    /** Square inch, 645.16 mm² exactly. */
    SQUARE_INCH("in²", Dimension.AREA, "645.16", "0", "in2"),
    /** Per cent. */
    PERCENT("%", Dimension.SHARE, "1", "0", "percent"),
    /** Degree Celsius. */
    CELSIUS("°C", Dimension.TEMPERATURE, "9", "0", "ºC"),
    /** Degree Fahrenheit. */
    FAHRENHEIT("°F", Dimension.TEMPERATURE, "5", "-160", "ºF"),
    /** Hour. */
    HOUR("hours", Dimension.TIME, "1", "0", "hour", "h"),
    /** Day of 24 hours. */
    DAY("days", Dimension.TIME, "24", "0", "day", "d"),
    /** No unit: the figure is a plain number. */
    NUMBER("", Dimension.NUMBER, "1", "0");

    private static final List<Unit> ALL = List.of(values());

    private final String symbol;
    private final Dimension dimension;
    private final BigDecimal factor;
    private final BigDecimal offset;
    private final List<String> aliases;

    Unit(String symbol, Dimension dimension, String factor, String offset, String... aliases) {
        this.symbol = symbol;
        this.dimension = dimension;
        this.factor = new BigDecimal(factor);
        this.offset = new BigDecimal(offset);
        this.aliases = List.of(aliases);
    }

    /**
     * The unit as it is printed.
     *
     * @return for example "kg"
     */
    public String symbol() {
        return symbol;
    }

    /**
     * What the unit measures.
     *
     * @return the dimension
     */
    public Dimension dimension() {
        return dimension;
    }

    /**
     * The amount in the unit of comparison of the dimension, exactly.
     *
     * @param amount an amount in this unit
     * @return the amount in kilograms, millimetres, square millimetres, per cent, ninths of a degree Celsius or hours, or as it
     *     is where it is a plain number
     */
    public BigDecimal toCommon(BigDecimal amount) {
        return amount.multiply(factor).add(offset);
    }

    /**
     * One of this unit in the unit of comparison, where a difference counts and not a point on a scale.
     *
     * @return the factor, greater than 0
     */
    public BigDecimal factor() {
        return factor;
    }

    /**
     * The unit that somebody wrote, whatever the case, save that temperature scales are capitals.
     *
     * @param text a symbol or a word, such as "kg" or "pounds"
     * @return the unit, or nothing if it is not one of ours; no words mean {@link #NUMBER}
     */
    public static Optional<Unit> of(String text) {
        for (Unit unit : ALL) {
            if (unit.isCalled(text)) {
                return Optional.of(unit);
            }
        }
        return Optional.empty();
    }

    private boolean isCalled(String text) {
        if (symbol.equalsIgnoreCase(text)) {
            return this != NUMBER;
        }
        for (String alias : aliases) {
            if (alias.equalsIgnoreCase(text)) {
                return true;
            }
        }
        return false;
    }
}
