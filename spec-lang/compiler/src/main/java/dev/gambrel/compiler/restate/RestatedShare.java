package dev.gambrel.compiler.restate;

import dev.gambrel.diagnostic.TreePath;
import java.math.BigDecimal;

/**
 * What a line shall state of its part.
 *
 * @param part the address of a part
 * @param percent its share of the cut above
 * @param spread one standard deviation between carcasses
 */
public record RestatedShare(TreePath part, BigDecimal percent, Spread spread) {
    /** What becomes of the spread. */
    public sealed interface Spread {}

    /** Whatever is written stays: nothing better is known. A range keeps its width. */
    public record AsWritten() implements Spread {}

    /**
     * Another is written.
     *
     * @param points points of a per cent
     */
    public record Points(BigDecimal points) implements Spread {}
}
