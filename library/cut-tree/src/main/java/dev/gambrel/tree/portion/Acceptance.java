package dev.gambrel.tree.portion;

import dev.gambrel.quantity.Dimension;

/**
 * What is accepted of a portion, and what gives way where not everything can be kept.
 *
 * @param weight the weights that are accepted
 * @param thickness the thicknesses that are accepted
 * @param precedence whether weight or thickness rules
 * @param smallest the weight of the smallest last piece that still counts as a portion
 * @param fewest how many there must be at the least
 * @param outside how many portions may lie outside their weight or thickness
 */
public record Acceptance(
        Limit weight, Limit thickness, Precedence precedence, Measure smallest, Fewest fewest, Outside outside) {
    /** Nothing said. */
    public static final Acceptance NONE = new Acceptance(
            new Limit.NotStated(),
            new Limit.NotStated(),
            Precedence.NOT_STATED,
            new Measure.NotStated(),
            new Fewest.NotStated(),
            new Outside.None());

    /**
     * Checks the dimensions.
     *
     * @throws IllegalArgumentException if a weight is no weight or a thickness no length
     */
    public Acceptance {
        weight.measuring(Dimension.WEIGHT);
        thickness.measuring(Dimension.LENGTH);
        smallest.measuring(Dimension.WEIGHT);
    }

    /**
     * What is accepted, with no portion outside.
     *
     * @param weight the weights that are accepted
     * @param thickness the thicknesses that are accepted
     * @param precedence whether weight or thickness rules
     * @param smallest the weight of the smallest last piece that still counts as a portion
     * @param fewest how many there must be at the least
     */
    public Acceptance(Limit weight, Limit thickness, Precedence precedence, Measure smallest, Fewest fewest) {
        this(weight, thickness, precedence, smallest, fewest, new Outside.None());
    }

    /**
     * A range of weights and nothing else.
     *
     * @param weight the weights that are accepted
     * @return what is accepted
     */
    public static Acceptance of(Limit weight) {
        return new Acceptance(weight, NONE.thickness, NONE.precedence, NONE.smallest, NONE.fewest, NONE.outside);
    }
}
