package dev.gambrel.quantity;

import java.util.Arrays;
import java.util.stream.Collectors;

/** What a quantity measures. */
public enum Dimension {
    /** Weight as the scale shows it; compared in kilograms. */
    WEIGHT("a weight"),
    /** Length or thickness; compared in millimetres. */
    LENGTH("a length"),
    /** Area, such as that of an eye muscle; compared in square millimetres. */
    AREA("an area"),
    /** A part of something; compared in per cent. */
    SHARE("a share"),
    /** Temperature; compared in ninths of a degree Celsius, which is exact for both scales. */
    TEMPERATURE("a temperature"),
    /** Time that passes; compared in hours. */
    TIME("a time"),
    /** A figure without a unit, such as a grade or a score. */
    NUMBER("a plain number");

    private final String words;

    Dimension(String words) {
        this.words = words;
    }

    /**
     * The dimension in a sentence.
     *
     * @return words such as "a weight"
     */
    public String words() {
        return words;
    }

    /**
     * The units that measure this, for a message.
     *
     * @return the symbols with commas between
     */
    public String unitSymbols() {
        return Arrays.stream(Unit.values())
                .filter(unit -> unit.dimension() == this)
                .map(Unit::symbol)
                .collect(Collectors.joining(", "));
    }
}
