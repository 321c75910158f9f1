package dev.gambrel.tree.rules.bench;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.tree.Landmark;
import dev.gambrel.tree.Separation;
import dev.gambrel.tree.anatomy.AnatomicalCount;
import dev.gambrel.tree.inspection.BenchCode;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Site;
import dev.gambrel.tree.inspection.TreeCode;
import java.util.List;
import java.util.function.Consumer;

/** A cut has no more ribs than the animal, and as many as its first and last rib leave it. */
public final class RibCounts implements Rule {
    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        for (Site site : inspection.sites()) {
            if (!site.isCarcass() && site.cut().description().bench().ribs().isStated()) {
                checkAnimal(site, inspection, found);
                checkSpan(site, found);
            }
        }
    }

    private static void checkAnimal(Site site, Inspection inspection, Consumer<Diagnostic> found) {
        AnatomicalCount asked = site.cut().description().bench().ribs();
        AnatomicalCount known = inspection.tree().species().ribs();
        if (known.isStated() && asked.most() > known.most()) {
            found.accept(Diagnostic.of(TreeCode.NO_SUCH_RIB, site.at(Aspect.RIB_COUNT))
                    .with("rib", asked.most())
                    .with("species", inspection.tree().species().name())
                    .with("count", known)
                    .help("Write how many ribs one piece has, counted on one side."));
        }
    }

    private static void checkSpan(Site site, Consumer<Diagnostic> found) {
        AnatomicalCount asked = site.cut().description().bench().ribs();
        List<Separation> separations = site.cut().description().separations();
        for (int i = 0; i < separations.size(); i++) {
            if (separations.get(i).landmark() instanceof Landmark.Ribs ribs && !agrees(asked, ribs)) {
                found.accept(Diagnostic.of(BenchCode.RIBS_DIFFER, site.at(Aspect.RIB_COUNT))
                        .with("cut", site.name())
                        .with("asked", asked)
                        .with("first", ribs.first())
                        .with("last", ribs.last())
                        .with("count", span(ribs))
                        .related(new Place.InTree(site.path(), Aspect.SEPARATION, i), "its first and last rib")
                        .help("Both ends count: ribs 6 to 13 are 8 ribs."));
            }
        }
    }

    private static boolean agrees(AnatomicalCount asked, Landmark.Ribs ribs) {
        return ribs.last() < ribs.first() || span(ribs) >= asked.least() && span(ribs) <= asked.most();
    }

    private static long span(Landmark.Ribs ribs) {
        return (long) ribs.last() - ribs.first() + 1;
    }
}
