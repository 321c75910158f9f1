package dev.gambrel.yields.houseshares;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.yields.Doubt;
import dev.gambrel.yields.figure.Spread;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What shares of a cut to expect of its parts, closed to the whole.
 *
 * @param parts in order
 * @param tests on how many tests they rest
 */
public record ExpectedShares(List<ExpectedShare> parts, int tests) {
    /**
     * Copies the list and checks it.
     *
     * @throws IllegalArgumentException if the shares do not add up to 1
     */
    public ExpectedShares {
        parts = List.copyOf(parts);
        double sum = parts.stream().mapToDouble(ExpectedShare::share).sum();
        if (!(Math.abs(sum - 1) <= 1e-9)) {
            throw new IllegalArgumentException("shares of a whole add up to 1, not " + sum);
        }
    }

    /**
     * The doubt about the mean shares, for the yields of many carcasses.
     *
     * @param cut where the cut stands in its tree
     * @return the standard error of each part whose doubt is known
     */
    public Doubt.OfParts doubt(TreePath cut) {
        Map<TreePath, Double> points = new LinkedHashMap<>();
        for (ExpectedShare part : parts) {
            if (part.ofMean() instanceof Spread.Stated stated) {
                points.put(cut.then(part.part()), 100 * stated.standardDeviation());
            }
        }
        return new Doubt.OfParts(points);
    }

    /**
     * The shares as a specification may state them.
     *
     * @param places how many decimals a per cent is given, from 0 to 6
     * @return lines that add up to exactly 100 %
     * @throws IllegalArgumentException if that is no such number
     */
    public Proposal proposal(int places) {
        return Proposal.of(this, places);
    }
}
