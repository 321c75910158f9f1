package dev.gambrel.tree;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Expected;
import dev.gambrel.text.TradeName;
import java.util.List;

/**
 * What is lost between two weighings of one carcass.
 *
 * @param from the earlier basis
 * @param to the later basis
 * @param loss what the loss is called
 * @param share how much, in per cent of the earlier weight
 * @param sources names of the sources that the share rests on
 */
public record BasisStep(Basis from, Basis to, TradeName loss, Expected share, List<TradeName> sources) {
    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException if the figure is no share
     */
    public BasisStep {
        share.measuring(Dimension.SHARE);
        sources = List.copyOf(sources);
    }

    /**
     * A step whose share cites nothing.
     *
     * @param from the earlier basis
     * @param to the later basis
     * @param loss what the loss is called
     * @param share how much, in per cent of the earlier weight
     */
    public BasisStep(Basis from, Basis to, TradeName loss, Expected share) {
        this(from, to, loss, share, List.of());
    }
}
