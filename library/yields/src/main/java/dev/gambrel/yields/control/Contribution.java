package dev.gambrel.yields.control;

import dev.gambrel.text.TradeName;
import java.util.List;
import java.util.stream.Collectors;

/**
 * How far off one balance of a cut is, such as bone against the other parts.
 *
 * @param over the parts on the one side
 * @param under the parts on the other side
 * @param deviations how many standard deviations it is off: above 0 where there is more than usual of the one side
 * @param part of what is off in all, how much this balance tells by itself, from 0 to 1. Balances overlap, so these do not add up
 */
public record Contribution(List<TradeName> over, List<TradeName> under, double deviations, double part) {
    /** Copies the lists. */
    public Contribution {
        over = List.copyOf(over);
        under = List.copyOf(under);
    }

    /**
     * The balance in words.
     *
     * @return for example "femur against topside"
     */
    public String words() {
        return words(over) + " against " + words(under);
    }

    private static String words(List<TradeName> parts) {
        return parts.stream().map(TradeName::text).collect(Collectors.joining(", "));
    }
}
