package dev.gambrel.yields.houseshares;

import dev.gambrel.text.TradeName;
import java.math.BigDecimal;

/**
 * A line that a specification may state.
 *
 * @param part the name of the part
 * @param percent its share
 * @param spread how far carcasses stray from it
 * @param tests on how many tests it rests
 */
public record ProposedShare(TradeName part, BigDecimal percent, Spread spread, int tests) {
    /** One standard deviation between carcasses. */
    public sealed interface Spread {}

    /**
     * As the tests give it.
     *
     * @param points points of a per cent, rounded
     */
    public record AsFound(BigDecimal points) implements Spread {}

    /**
     * Lessened to the sum of the others: rounding, or taking off the error of the weighing, had left more. Say so.
     *
     * @param points what may be stated, points of a per cent
     * @param found what was found, rounded
     */
    public record Lessened(BigDecimal points, BigDecimal found) implements Spread {}

    /** One test, or figures without spreads, tell none. */
    public record NotKnown() implements Spread {}
}
