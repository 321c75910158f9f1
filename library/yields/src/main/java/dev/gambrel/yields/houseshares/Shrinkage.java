package dev.gambrel.yields.houseshares;

import dev.gambrel.yields.figure.Spread;
import java.util.ArrayList;
import java.util.List;

/**
 * The shares of a house drawn towards a published table: Zp + (1 − Z) q with one Z = n / (n + κ) for all parts, so that they close.
 *
 * <p>With few tests this is nearer to the truth on average than either (W. James and C. Stein, "Estimation with quadratic loss", 1961;
 * B. Efron and C. Morris, "Stein's paradox in statistics", Scientific American 236, 1977).
 *
 * @param worth how many tests the table is worth
 * @param published the table
 */
public record Shrinkage(TableWorth worth, PublishedShares published) {
    /**
     * Draws the mean shares of tests towards the table.
     *
     * <p>The variance between carcasses is that of both, the table's counting κ times and that of n tests n − 1 times; so the spreads
     * close too. One test tells no spread, then the table's holds; a table that tells none leaves that of the tests. The variance of
     * the mean is Z² times that of the tests' own and Z (1 − Z) / n times that between carcasses, which is what κ says of how far
     * houses lie from the table.
     *
     * @param own the tests' shares
     * @param by what the mean shares are the means of
     * @return what to expect
     * @throws IllegalArgumentException if the table has other parts
     */
    public ExpectedShares of(HouseShares own, Averaging by) {
        if (own.parts().size() != published.shares().size()) {
            throw new IllegalArgumentException(
                    own.parts().size() + " parts, and " + published.shares().size() + " published");
        }
        double number = own.tests().effectiveNumber();
        double z = worth.ownWeight(number);
        List<ExpectedShare> expected = new ArrayList<>();
        for (int i = 0; i < own.parts().size(); i++) {
            PartShare part = own.parts().get(i);
            double share = z * part.share(by) + (1 - z) * published.means().share(i);
            double variance = variance(part, i, number);
            double ofTests = part.straying() instanceof Straying.Known known
                    ? Math.pow(PartShare.error(by, known), 2)
                    : variance / number;
            expected.add(new ExpectedShare(
                    part.part(),
                    Math.min(1, share),
                    Spread.ofVariance(variance),
                    Spread.ofVariance(z * z * ofTests + z * (1 - z) / number * variance)));
        }
        return new ExpectedShares(expected, own.tests().tests().size());
    }

    /** NaN where neither tells one. */
    private double variance(PartShare part, int index, double number) {
        double table = published.shares().get(index).spread().variance();
        boolean tableTells = published.tellsSpreads() && worth.tests() > 0;
        if (!(part.straying() instanceof Straying.Known known)) {
            return tableTells ? table : Double.NaN;
        }
        double tests = Math.pow(known.spread().betweenCarcasses(), 2);
        double z = tableTells ? worth.ownWeight(number - 1) : 1;
        return z * tests + (1 - z) * (tableTells ? table : 0);
    }
}
