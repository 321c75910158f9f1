package dev.gambrel.tree.estimate;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Unit;
import java.util.Optional;

/**
 * What a product of figures measures, as powers: an area is a length twice, and a weight over a weight is a plain number. A
 * share is not a plain number: it is told in per cent.
 *
 * @param weight how often a weight
 * @param length how often a length
 * @param share how often a share
 * @param time how often a time
 */
public record Dimensions(int weight, int length, int share, int time) {
    /** A plain number. */
    public static final Dimensions NUMBER = new Dimensions(0, 0, 0, 0);

    /**
     * What one dimension measures.
     *
     * @param dimension any but temperature, of which no multiple has a meaning
     * @return its powers
     * @throws IllegalArgumentException for a temperature
     */
    public static Dimensions of(Dimension dimension) {
        return switch (dimension) {
            case WEIGHT -> new Dimensions(1, 0, 0, 0);
            case LENGTH -> new Dimensions(0, 1, 0, 0);
            case AREA -> new Dimensions(0, 2, 0, 0);
            case SHARE -> new Dimensions(0, 0, 1, 0);
            case TIME -> new Dimensions(0, 0, 0, 1);
            case NUMBER -> NUMBER;
            case TEMPERATURE -> throw new IllegalArgumentException("no multiple of a temperature has a meaning");
        };
    }

    /**
     * What a figure of an equation measures.
     *
     * @param coefficient the figure
     * @return its powers
     * @throws IllegalArgumentException if a temperature is among its units
     */
    public static Dimensions of(Expression.Coefficient coefficient) {
        Dimensions found = of(coefficient.figure().dimension());
        for (Unit unit : coefficient.per()) {
            found = found.times(of(unit.dimension()).inverse());
        }
        return found;
    }

    /**
     * Of the product.
     *
     * @param other the other factor
     * @return the powers added
     */
    public Dimensions times(Dimensions other) {
        return new Dimensions(weight + other.weight, length + other.length, share + other.share, time + other.time);
    }

    /**
     * Of one over it.
     *
     * @return the powers with the opposite sign
     */
    public Dimensions inverse() {
        return new Dimensions(-weight, -length, -share, -time);
    }

    /**
     * The one dimension that this is.
     *
     * @return the dimension, or nothing for such as a weight over a length
     */
    public Optional<Dimension> plain() {
        for (Dimension dimension : Dimension.values()) {
            if (dimension != Dimension.TEMPERATURE && equals(of(dimension))) {
                return Optional.of(dimension);
            }
        }
        return Optional.empty();
    }

    /**
     * In a sentence.
     *
     * @return "a share", or such as "kg per mm"
     */
    public String words() {
        return plain().map(Dimension::words).orElseGet(this::units);
    }

    private String units() {
        StringBuilder over = new StringBuilder();
        StringBuilder under = new StringBuilder();
        power("kg", weight, over, under);
        power("mm", length, over, under);
        power("%", share, over, under);
        power("hours", time, over, under);
        return (over.isEmpty() ? "a number" : over) + under.toString();
    }

    private static void power(String unit, int power, StringBuilder over, StringBuilder under) {
        String raised = Math.abs(power) == 1 ? unit : unit + "^" + Math.abs(power);
        if (power > 0) {
            over.append(over.isEmpty() ? "" : " × ").append(raised);
        } else if (power < 0) {
            under.append(" per ").append(raised);
        }
    }
}
