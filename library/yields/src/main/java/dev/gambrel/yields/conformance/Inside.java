package dev.gambrel.yields.conformance;

import dev.gambrel.tree.portion.Limit;
import dev.gambrel.yields.portions.PortionWeight;

/**
 * How many pieces are expected inside a limit. It proves nothing: an expectation is not a limit.
 *
 * @param of what the pieces are of, such as "a carcass of 22 kg"; empty where that makes no difference
 * @param weight the weight of one piece, in kilograms, taken as normal
 * @param within the share of pieces that the limit accepts, from 0 to 1
 * @param light the share that is lighter
 * @param heavy the share that is heavier
 */
public record Inside(String of, PortionWeight weight, double within, double light, double heavy) {
    /**
     * The shares of pieces whose weight is known with its spread.
     *
     * @param of what the pieces are of
     * @param weight the weight of one piece, in kilograms
     * @param limit a limit on the weight
     * @return the shares, which add up to 1
     */
    public static Inside of(String of, PortionWeight weight, Limit limit) {
        double light = limit.least().map(low -> weight.shareUnder(low.value())).orElse(0.0);
        double heavy = limit.most().map(high -> weight.shareOver(high.value())).orElse(0.0);
        return new Inside(of, weight, weight.shareWithin(limit).orElse(1), light, heavy);
    }
}
