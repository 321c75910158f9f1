package dev.gambrel.tree.rules.anatomy;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.tree.Landmark;
import dev.gambrel.tree.Separation;
import dev.gambrel.tree.anatomy.AnatomicalCount;
import dev.gambrel.tree.anatomy.SkeletonPoint;
import dev.gambrel.tree.anatomy.Species;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Site;
import dev.gambrel.tree.inspection.TreeCode;
import java.util.List;
import java.util.function.Consumer;

/** Ribs and vertebrae by number are those that the species has. */
public final class SkeletonNumbers implements Rule {
    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        Species species = inspection.tree().species();
        for (Site site : inspection.sites()) {
            if (!site.isCarcass()) {
                List<Separation> separations = site.cut().description().separations();
                for (int i = 0; i < separations.size(); i++) {
                    Place at = new Place.InTree(site.path(), Aspect.SEPARATION, i);
                    checkLandmark(separations.get(i).landmark(), species, at, found);
                }
            }
        }
    }

    private static void checkLandmark(Landmark landmark, Species species, Place at, Consumer<Diagnostic> found) {
        if (landmark instanceof Landmark.Between between) {
            checkPoint(between.first(), species, at, found);
            checkPoint(between.second(), species, at, found);
        } else if (landmark instanceof Landmark.Ribs ribs) {
            int lower = Math.min(ribs.first(), ribs.last());
            checkRib(lower < 1 ? lower : Math.max(ribs.first(), ribs.last()), species, at, found);
        }
    }

    private static void checkPoint(SkeletonPoint point, Species species, Place at, Consumer<Diagnostic> found) {
        if (point instanceof SkeletonPoint.Rib rib) {
            checkRib(rib.number(), species, at, found);
        } else if (point instanceof SkeletonPoint.Vertebra vertebra) {
            AnatomicalCount count = species.vertebrae().getOrDefault(vertebra.region(), AnatomicalCount.NOT_STATED);
            if (isBeyond(vertebra.number(), count)) {
                found.accept(Diagnostic.of(TreeCode.NO_SUCH_VERTEBRA, at)
                        .with("region", vertebra.region().words())
                        .with("number", vertebra.number())
                        .with("species", species.name())
                        .with("count", count)
                        .help("Count from the head; each region of the spine begins again at 1."));
            }
        }
    }

    private static void checkRib(int rib, Species species, Place at, Consumer<Diagnostic> found) {
        if (isBeyond(rib, species.ribs())) {
            found.accept(Diagnostic.of(TreeCode.NO_SUCH_RIB, at)
                    .with("rib", rib)
                    .with("species", species.name())
                    .with("count", species.ribs())
                    .help("Count the ribs from the head; after the last one comes the first lumbar vertebra."));
        }
    }

    private static boolean isBeyond(int number, AnatomicalCount count) {
        return number < 1 || count.isStated() && number > count.most();
    }
}
