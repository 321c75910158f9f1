package dev.gambrel.tree.choice;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;

/**
 * A place between weights: just below one, just above it, or beyond them all. So a range from one mark to another has no
 * ends that may or may not belong to it: "under 1 kg" ends below 1 kg, and "at most 1 kg" above it.
 */
public sealed interface Mark extends Comparable<Mark> {
    /** Above nothing: whatever is cut weighs more. */
    Mark START = new Above(Quantity.of("0", Unit.KILOGRAM));

    /** Beyond every weight. */
    Mark END = new Beyond();

    /**
     * Just below a weight.
     *
     * @param weight the weight, which lies above the mark
     */
    record Below(Quantity weight) implements Mark {}

    /**
     * Just above a weight.
     *
     * @param weight the weight, which lies below the mark
     */
    record Above(Quantity weight) implements Mark {}

    /** Beyond every weight. */
    record Beyond() implements Mark {}

    /**
     * Compares places on the scale, exactly; 1 kg and 1000 g are one weight.
     *
     * @param other another mark
     * @return negative if this one comes first
     */
    @Override
    default int compareTo(Mark other) {
        if (this instanceof Beyond || other instanceof Beyond) {
            return Boolean.compare(this instanceof Beyond, other instanceof Beyond);
        }
        int byWeight = weightOf(this).compareTo(weightOf(other));
        return byWeight != 0 ? byWeight : Boolean.compare(this instanceof Above, other instanceof Above);
    }

    private static Quantity weightOf(Mark mark) {
        return mark instanceof Below below ? below.weight() : ((Above) mark).weight();
    }
}
