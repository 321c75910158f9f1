package dev.gambrel.yields.packs;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import java.util.Optional;

/**
 * What is weighed with a pack and is not meat: tray, film, soaker pad, label. Packs are judged by what is left.
 *
 * @param weight the same for every pack; where it varies, weigh net
 */
public record Tare(Quantity weight) {
    /** Nothing but the meat is on the scale. */
    public static final Tare NONE = new Tare(Quantity.of("0", Unit.GRAM));

    /**
     * Checks that it is a weight.
     *
     * @throws IllegalArgumentException if it is not, or is less than nothing
     */
    public Tare {
        weight.measuring(Dimension.WEIGHT);
        if (weight.amount().signum() < 0) {
            throw new IllegalArgumentException("a tare of less than nothing");
        }
    }

    /**
     * What a pack weighs without it.
     *
     * @param gross what the scale shows
     * @return the net weight, or nothing where {@link WeighedPacks#isAcceptable} says no to it or to what the scale shows
     */
    public Optional<Quantity> net(Quantity gross) {
        if (!WeighedPacks.isAcceptable(gross)) {
            return Optional.empty();
        } else if (weight.amount().signum() == 0) {
            return Optional.of(gross);
        }
        Quantity net = gross.unit() == weight.unit()
                ? Quantity.rounded(gross.amount().subtract(weight.amount()), gross.unit())
                : Quantity.rounded(gross.common().subtract(weight.common()), Unit.KILOGRAM);
        return Optional.of(net).filter(WeighedPacks::isAcceptable);
    }
}
