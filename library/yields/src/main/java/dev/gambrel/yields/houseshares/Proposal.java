package dev.gambrel.yields.houseshares;

import dev.gambrel.yields.figure.Spread;
import dev.gambrel.yields.table.LargestRemainder;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;

/**
 * Shares that a specification may state: they add up to exactly 100 %, rounded by largest remainder, and no spread exceeds the sum
 * of the others, which no figures that close could have.
 *
 * @param lines one for each part, in order
 * @param places decimals of a per cent; a spread that they would round away has more
 */
public record Proposal(List<ProposedShare> lines, int places) {
    private static final int MOST_PLACES = 6;

    /** Copies the list. */
    public Proposal {
        lines = List.copyOf(lines);
    }

    static Proposal of(ExpectedShares expected, int places) {
        if (places < 0 || places > MOST_PLACES) {
            throw new IllegalArgumentException("from 0 to " + MOST_PLACES + " decimals, not " + places);
        }
        double steps = 100 * Math.pow(10, places);
        double[] exact = expected.parts().stream()
                .mapToDouble(part -> part.share() * steps)
                .toArray();
        long[] shares = LargestRemainder.apportion(exact, Math.round(steps));
        List<BigDecimal> spreads = spreads(expected, places);
        List<ProposedShare> lines = new ArrayList<>();
        for (int i = 0; i < shares.length; i++) {
            ExpectedShare part = expected.parts().get(i);
            lines.add(new ProposedShare(
                    part.part(),
                    BigDecimal.valueOf(shares[i], places),
                    spreads.isEmpty() ? new ProposedShare.NotKnown() : spread(spreads, i),
                    expected.tests()));
        }
        return new Proposal(lines, places);
    }

    /** Rounded; empty where one is not known, since one alone says nothing of shares that close. */
    private static List<BigDecimal> spreads(ExpectedShares expected, int places) {
        List<BigDecimal> spreads = new ArrayList<>();
        for (ExpectedShare part : expected.parts()) {
            if (part.betweenCarcasses() instanceof Spread.Stated stated) {
                spreads.add(points(stated, places));
            }
        }
        return spreads.size() == expected.parts().size() ? spreads : List.of();
    }

    private static BigDecimal points(Spread.Stated spread, int places) {
        BigDecimal exact = BigDecimal.valueOf(100 * spread.standardDeviation());
        int enough = places;
        while (enough < MOST_PLACES && isLost(exact, enough)) {
            enough++;
        }
        return exact.setScale(enough, RoundingMode.HALF_UP);
    }

    /** Rounded away: a spread that is merely small is not none. */
    private static boolean isLost(BigDecimal exact, int places) {
        return exact.signum() > 0
                && exact.setScale(places, RoundingMode.HALF_UP).signum() == 0;
    }

    /** At most one spread can exceed the sum of the others. */
    private static ProposedShare.Spread spread(List<BigDecimal> spreads, int index) {
        BigDecimal own = spreads.get(index);
        BigDecimal others =
                spreads.stream().reduce(BigDecimal.ZERO, BigDecimal::add).subtract(own);
        return own.compareTo(others) > 0 ? new ProposedShare.Lessened(others, own) : new ProposedShare.AsFound(own);
    }
}
