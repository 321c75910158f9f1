package dev.gambrel.yields.houseshares;

import dev.gambrel.text.TradeName;
import dev.gambrel.yields.composition.Composition;
import dev.gambrel.yields.figure.Spread;
import java.util.List;
import java.util.stream.IntStream;

/**
 * One test and no table that tells spreads: how carcasses stray is not known. That is not none.
 *
 * @param parts the names of the parts
 * @param centre where the shares lie
 */
public record LogRatioCentre(List<TradeName> parts, Composition centre) implements LogRatioShares {
    /** Copies the list. */
    public LogRatioCentre {
        parts = List.copyOf(parts);
    }

    @Override
    public ExpectedShares expected() {
        return new ExpectedShares(
                IntStream.range(0, parts.size())
                        .mapToObj(i ->
                                new ExpectedShare(parts.get(i), centre.share(i), Spread.NOT_STATED, Spread.NOT_STATED))
                        .toList(),
                1);
    }
}
