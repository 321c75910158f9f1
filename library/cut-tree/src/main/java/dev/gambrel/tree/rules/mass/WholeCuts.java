package dev.gambrel.tree.rules.mass;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Site;
import dev.gambrel.tree.inspection.TreeCode;
import java.util.function.Consumer;

/** Every part has a share, save a rest and a trim; and what is cut up is neither sent away whole nor portioned. */
public final class WholeCuts implements Rule {
    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        for (Site site : inspection.sites()) {
            for (Part part : site.parts()) {
                boolean isWay = site.hasWays() && part instanceof Cut;
                if (mustHaveShare(part) && part.share() instanceof Share.NotStated && !site.isUnsure() && !isWay) {
                    found.accept(shareMissing(site, part));
                }
            }
            if (!site.isCarcass() && site.isDivided()) {
                checkNotWhole(site, site.cut(), found);
            }
        }
    }

    private static boolean mustHaveShare(Part part) {
        return !(part instanceof Part.Rest) && !(part instanceof Part.Trim);
    }

    private static Diagnostic shareMissing(Site site, Part part) {
        return Diagnostic.of(TreeCode.SHARE_MISSING, site.at(part, Aspect.NAME))
                .with("part", part.name())
                .with("above", site.name())
                .help("Write how much of the " + site.name() + " it is: " + keyword(part) + " " + part.name()
                        + " 12.5 % ± 0.8 %");
    }

    private static String keyword(Part part) {
        return part instanceof Part.Bone ? "bone" : part instanceof Part.Loss ? "loss" : "cut";
    }

    private static void checkNotWhole(Site site, Cut cut, Consumer<Diagnostic> found) {
        if (cut.home() instanceof Home.ToStream to) {
            found.accept(Diagnostic.of(TreeCode.DIVIDED_AND_SENT, site.at(Aspect.STREAM))
                    .with("cut", cut.name())
                    .with("stream", to.stream())
                    .help("Take the arrow away, and send what is left with a line such as: rest -> " + to.stream()));
        }
        for (Portion portion : cut.portions()) {
            found.accept(Diagnostic.of(
                            TreeCode.PORTION_OF_DIVIDED,
                            new Place.InTree(site.path().then(portion.name()), Aspect.NAME))
                    .with("cut", cut.name())
                    .with("portion", portion.name())
                    .help("Write the portion under the cut that it is cut from."));
        }
    }
}
