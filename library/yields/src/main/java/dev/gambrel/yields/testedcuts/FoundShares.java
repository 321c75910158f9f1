package dev.gambrel.yields.testedcuts;

import dev.gambrel.text.TradeName;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Spread;
import dev.gambrel.yields.houseshares.ExpectedShare;
import dev.gambrel.yields.houseshares.ExpectedShares;
import dev.gambrel.yields.houseshares.Proposal;
import java.util.ArrayList;
import java.util.List;

/**
 * The shares of one cut as the tests found them.
 *
 * @param cut the cut and its tests
 * @param by what the shares are means of
 * @param ownWeight what the tests weigh beside what is stated, from 0 to 1: n / (n + κ); 1 where nothing else counts
 * @param shares one for each part that was found, in order; with the kept losses they add up to 1
 */
public record FoundShares(TestedCut.Found cut, Mean by, double ownWeight, List<FoundShare> shares) {
    /** Copies the list. */
    public FoundShares {
        shares = List.copyOf(shares);
    }

    /**
     * Works the shares out.
     *
     * @param cut the cut and its tests
     * @param by what the shares shall be means of
     * @param prior whether what is stated counts
     * @return the shares
     * @throws IllegalArgumentException if what is stated shall count and does not tell every share; ask {@link #canDrawTowards}
     */
    public static FoundShares of(TestedCut.Found cut, Mean by, Prior prior) {
        return new FoundSharesMaker(cut, by, prior).make();
    }

    /**
     * Whether the tests can be drawn towards what is stated.
     *
     * @param cut the cut
     * @return true if a share above 0 is stated of every part
     */
    public static boolean canDrawTowards(TestedCut.Found cut) {
        return cut.parts().stream()
                .allMatch(part -> part.isStated() && part.stated().mean() > 0);
    }

    /**
     * How many tests there are.
     *
     * @return 1 or more
     */
    public int number() {
        return cut.tests().tests().size();
    }

    /**
     * Parts whose stated share lies outside the range of the mean. Of 20 that did not move one does so by chance.
     *
     * @return in order; none where what is stated counts too, since then it is no longer held against the tests alone
     */
    public List<FoundShare> moved() {
        return ownWeight < 1
                ? List.of()
                : shares.stream().filter(FoundShare::isStatedOutside).toList();
    }

    /**
     * Shares to state: those found, and the kept losses as they are.
     *
     * @param places decimals of a per cent, from 0 to 6
     * @return lines that add up to exactly 100 %: first the parts found, then the kept losses
     */
    public Proposal proposal(int places) {
        List<ExpectedShare> all = new ArrayList<>();
        for (int i = 0; i < shares.size(); i++) {
            FoundShare found = shares.get(i);
            all.add(
                    found.straying() instanceof FoundShare.Told told
                            ? new ExpectedShare(
                                    cut.tests().parts().get(i),
                                    found.share(),
                                    new Spread.Stated(told.betweenCarcasses()),
                                    new Spread.Stated(told.ofMean()))
                            : new ExpectedShare(
                                    cut.tests().parts().get(i), found.share(), Spread.NOT_STATED, Spread.NOT_STATED));
        }
        for (TestedPart loss : cut.kept()) {
            Estimate stated = loss.stated();
            all.add(new ExpectedShare(TradeName.of(loss.name()), stated.mean(), stated.spread(), Spread.NOT_STATED));
        }
        return new ExpectedShares(all, number()).proposal(places);
    }
}
