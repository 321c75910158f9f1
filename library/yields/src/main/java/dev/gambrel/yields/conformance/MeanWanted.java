package dev.gambrel.yields.conformance;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.yields.portions.PortionWeight;
import java.util.ArrayList;
import java.util.List;

/**
 * The mean at which few enough pieces would lie outside one end of a limit, where too many do now.
 *
 * @param end the end
 * @param limit what is accepted there
 * @param mean the mean in kilograms: the most at the top, the least at the low end
 */
public record MeanWanted(Margin.End end, Quantity limit, double mean) {
    /** What may lie outside at each end, so that the central 95 % are inside; common practice, no source. */
    public static final double OUTSIDE = 0.025;

    /**
     * The means that would do.
     *
     * @param inside what is expected now
     * @param limit the limit on the weight
     * @return one for each end at which more than {@link #OUTSIDE} are outside, the low end first
     */
    public static List<MeanWanted> of(Inside inside, Limit limit) {
        List<MeanWanted> wanted = new ArrayList<>(2);
        if (inside.light() > OUTSIDE) {
            limit.least()
                    .map(low -> new MeanWanted(Margin.End.LOW, low, lowest(low, inside.weight())))
                    .ifPresent(wanted::add);
        }
        if (inside.heavy() > OUTSIDE) {
            limit.most()
                    .map(high -> new MeanWanted(Margin.End.HIGH, high, highest(high, inside.weight())))
                    .ifPresent(wanted::add);
        }
        return wanted;
    }

    /**
     * The least mean at which few enough pieces are too light.
     *
     * @param least the least that is accepted
     * @param weight how far pieces stray
     * @return in kilograms
     */
    public static double lowest(Quantity least, PortionWeight weight) {
        return PortionWeight.aimFor(least.value(), weight.deviation(), OUTSIDE);
    }

    /**
     * The greatest mean at which few enough pieces are too heavy.
     *
     * @param most the most that is accepted
     * @param weight how far pieces stray
     * @return in kilograms
     */
    public static double highest(Quantity most, PortionWeight weight) {
        return PortionWeight.aimFor(most.value(), weight.deviation(), 1 - OUTSIDE);
    }
}
