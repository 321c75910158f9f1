package dev.gambrel.yields.testedcuts;

import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Interval;
import dev.gambrel.yields.figure.Spread;
import dev.gambrel.yields.houseshares.ExpectedShare;
import dev.gambrel.yields.houseshares.ExpectedShares;
import dev.gambrel.yields.houseshares.HouseShares;
import dev.gambrel.yields.houseshares.LogRatioModel;
import dev.gambrel.yields.houseshares.LogRatioShares;
import dev.gambrel.yields.houseshares.PartShare;
import dev.gambrel.yields.houseshares.PublishedShares;
import dev.gambrel.yields.houseshares.Shrinkage;
import dev.gambrel.yields.houseshares.Straying;
import java.util.ArrayList;
import java.util.List;
import org.apache.commons.statistics.distribution.TDistribution;

/** The shares of the parts among themselves, in the form asked for; then made shares of the whole cut. */
final class FoundSharesMaker {
    private static final double UPPER = 0.975;

    private final TestedCut.Found cut;
    private final Mean by;
    private final Prior prior;
    private final HouseShares house;
    private final double ofCut;

    FoundSharesMaker(TestedCut.Found cut, Mean by, Prior prior) {
        this.cut = cut;
        this.by = by;
        this.prior = prior;
        this.house = HouseShares.of(cut.tests());
        this.ofCut = cut.leftByKept();
    }

    FoundShares make() {
        if (prior instanceof Prior.Stated stated) {
            Shrinkage table = new Shrinkage(stated.worth(), stated());
            List<FoundShare> drawn = by == Mean.RATIOS ? ofRatios(LogRatioShares.of(cut.tests(), table)) : drawn(table);
            return new FoundShares(cut, by, stated.worth().ownWeight(cut.tests().effectiveNumber()), drawn);
        }
        List<FoundShare> alone = by == Mean.RATIOS ? ofRatios(LogRatioShares.of(cut.tests())) : alone();
        return new FoundShares(cut, by, 1, alone);
    }

    /** What is stated, of what the kept losses leave; spreads that cannot close tell nothing. */
    private PublishedShares stated() {
        if (!FoundShares.canDrawTowards(cut)) {
            throw new IllegalArgumentException("no share is stated of every part of " + cut.path());
        }
        double sum =
                cut.parts().stream().mapToDouble(part -> part.stated().mean()).sum();
        List<Estimate> shares =
                cut.parts().stream().map(part -> part.stated().times(1 / sum)).toList();
        double[] spreads = shares.stream()
                .mapToDouble(share -> Math.sqrt(share.spread().variance()))
                .toArray();
        double all = 0;
        double largest = 0;
        for (double spread : spreads) {
            all += spread;
            largest = Math.max(largest, spread);
        }
        return new PublishedShares(
                2 * largest <= all
                        ? shares
                        : shares.stream()
                                .map(share -> new Estimate(share.mean(), Spread.NOT_STATED))
                                .toList());
    }

    private List<FoundShare> alone() {
        List<FoundShare> shares = new ArrayList<>();
        for (int i = 0; i < house.parts().size(); i++) {
            PartShare part = house.parts().get(i);
            ExpectedShare expected = house.expected(by.averaging()).parts().get(i);
            FoundShare.Straying straying = part.straying() instanceof Straying.Known known
                    ? told(
                            expected,
                            part.mean95(by.averaging()).orElseThrow(),
                            part.next95(by.averaging()).orElseThrow(),
                            known.spread().isDrownedByWeighing())
                    : new FoundShare.NotTold();
            shares.add(found(i, expected.share(), straying));
        }
        return shares;
    }

    /** Ranges are Student's, with as many degrees of freedom as {@link LogRatioShares} gives a table. */
    private List<FoundShare> drawn(Shrinkage table) {
        double number = cut.tests().effectiveNumber();
        double freedom =
                number - 1 + (table.published().tellsSpreads() ? table.worth().tests() : 0);
        List<FoundShare> shares = new ArrayList<>();
        for (ExpectedShare part : table.of(house, by.averaging()).parts()) {
            shares.add(found(shares.size(), part.share(), student(part, freedom)));
        }
        return shares;
    }

    private static FoundShare.Straying student(ExpectedShare part, double freedom) {
        if (!(part.betweenCarcasses() instanceof Spread.Stated between
                && part.ofMean() instanceof Spread.Stated mean)) {
            return new FoundShare.NotTold();
        }
        double t = TDistribution.of(freedom).inverseCumulativeProbability(UPPER);
        double next = Math.hypot(between.standardDeviation(), mean.standardDeviation());
        return told(part, about(part.share(), t * mean.standardDeviation()), about(part.share(), t * next), false);
    }

    private static Interval about(double share, double half) {
        return new Interval(Math.max(0, share - half), Math.min(1, share + half));
    }

    private List<FoundShare> ofRatios(LogRatioShares ratios) {
        ExpectedShares expected = ratios.expected();
        List<FoundShare> shares = new ArrayList<>();
        for (int i = 0; i < expected.parts().size(); i++) {
            ExpectedShare part = expected.parts().get(i);
            FoundShare.Straying straying = ratios instanceof LogRatioModel model
                    ? told(part, model.mean95(i), model.next95(i), isDrowned(i))
                    : new FoundShare.NotTold();
            shares.add(found(i, part.share(), straying));
        }
        return shares;
    }

    private boolean isDrowned(int part) {
        return prior instanceof Prior.None
                && house.parts().get(part).straying() instanceof Straying.Known known
                && known.spread().isDrownedByWeighing();
    }

    private static FoundShare.Told told(ExpectedShare part, Interval mean, Interval next, boolean isDrowned) {
        return new FoundShare.Told(deviation(part.betweenCarcasses()), deviation(part.ofMean()), mean, next, isDrowned);
    }

    private static double deviation(Spread spread) {
        return Math.sqrt(spread.variance());
    }

    private FoundShare found(int index, double share, FoundShare.Straying straying) {
        FoundShare.Straying ofWhole = straying instanceof FoundShare.Told told
                ? new FoundShare.Told(
                        told.betweenCarcasses() * ofCut,
                        told.ofMean() * ofCut,
                        times(told.mean95()),
                        times(told.next95()),
                        told.isDrowned())
                : straying;
        return new FoundShare(cut.parts().get(index), share * ofCut, ofWhole);
    }

    private Interval times(Interval range) {
        return new Interval(range.low() * ofCut, range.high() * ofCut);
    }
}
