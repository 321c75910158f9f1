package dev.gambrel.tree.rules.bench;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Landmark;
import dev.gambrel.tree.Separation;
import dev.gambrel.tree.inspection.BenchCode;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Site;
import java.util.List;
import java.util.function.Consumer;

/** A cut at a distance has one distance all along, or one at each of two ends; no distance is less than nothing. */
public final class Distances implements Rule {
    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        for (Site site : inspection.sites()) {
            if (!site.isCarcass()) {
                List<Separation> separations = site.cut().description().separations();
                for (int i = 0; i < separations.size(); i++) {
                    if (separations.get(i).landmark() instanceof Landmark.AtDistance distance) {
                        check(distance.ends(), new Place.InTree(site.path(), Aspect.SEPARATION, i), found);
                    }
                }
            }
        }
    }

    private static void check(List<Landmark.End> ends, Place at, Consumer<Diagnostic> found) {
        for (Landmark.End end : ends) {
            if (end.distance().amount().signum() < 0) {
                found.accept(Diagnostic.of(BenchCode.BELOW_NOTHING, at)
                        .with("what", "distance")
                        .with("figure", end.distance())
                        .help("Write it without the minus, and say from what it is measured."));
            }
        }
        if (ends.isEmpty() || ends.size() > 2 || ends.size() == 2 && !areApart(ends.get(0), ends.get(1))) {
            found.accept(Diagnostic.of(BenchCode.ENDS_NOT_TOLD_APART, at)
                    .with("number", ends.size())
                    .help("Name an end with each of two: 25 mm from the eye at the rib end,"
                            + " 40 mm from the eye at the rump end."));
        }
    }

    private static boolean areApart(Landmark.End first, Landmark.End second) {
        return !first.at().isEmpty() && !second.at().isEmpty() && !TradeName.areSame(first.at(), second.at());
    }
}
