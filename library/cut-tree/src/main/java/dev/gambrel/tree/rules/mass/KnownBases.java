package dev.gambrel.tree.rules.mass;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.inspection.Findings;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Site;
import dev.gambrel.tree.inspection.TreeCode;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** A second share is of the carcass or of a cut above. */
public final class KnownBases implements Rule {
    /** What a share of the whole carcass is said to be of. */
    public static final TradeName CARCASS = TradeName.of("carcass");

    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        for (Site site : inspection.sites()) {
            for (Part part : site.parts()) {
                if (part.share() instanceof Share.Stated stated) {
                    checkBases(site, part, stated.others(), found);
                }
            }
        }
    }

    private static void checkBases(Site site, Part part, List<Share.Derived> others, Consumer<Diagnostic> found) {
        for (int i = 0; i < others.size(); i++) {
            TradeName base = others.get(i).of();
            if (find(site, base).isEmpty()) {
                List<TradeName> above = site.upward().stream()
                        .map(s -> s.isCarcass() ? CARCASS : s.cut().name())
                        .toList();
                Diagnostic finding = Diagnostic.of(
                                TreeCode.UNKNOWN_BASE,
                                new Place.InTree(site.path().then(part.name()), Aspect.DERIVED_SHARE, i))
                        .with("part", part.name())
                        .with("base", base);
                found.accept(Findings.suggest(finding, base, above));
            }
        }
    }

    /** The site that a name stands for, looking up from one. */
    static Optional<Site> find(Site from, TradeName base) {
        return from.upward().stream()
                .filter(site -> site.isCarcass()
                        ? base.equals(CARCASS)
                        : site.cut().name().equals(base))
                .findFirst();
    }
}
