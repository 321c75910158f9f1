package dev.gambrel.yields.cuttingtest;

import dev.gambrel.diagnostic.TreePath;
import java.math.BigDecimal;

/**
 * What a part fetches.
 *
 * @param part its address
 * @param state whether it is sold whole, as it enters the block, or trimmed
 * @param perKilogram money for one kilogram, in any one currency; 0 or more
 */
public record PartPrice(TreePath part, PartReading.State state, BigDecimal perKilogram) {
    /**
     * Checks the price.
     *
     * @throws IllegalArgumentException if it is less than 0
     */
    public PartPrice {
        if (perKilogram.signum() < 0) {
            throw new IllegalArgumentException("a price is 0 or more, not " + perKilogram);
        }
    }
}
