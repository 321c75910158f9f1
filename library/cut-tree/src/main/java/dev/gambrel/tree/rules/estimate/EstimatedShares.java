package dev.gambrel.tree.rules.estimate;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.estimate.Equation;
import dev.gambrel.tree.inspection.EquationCode;
import dev.gambrel.tree.inspection.Findings;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Site;
import dev.gambrel.tree.inspection.Vocabulary.Meaning;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** A share that is estimated has an estimate that comes out as a share, and a rest beside it that gives way. */
final class EstimatedShares {
    private final Estimates estimates;
    private final Dimensioning dimensioning;

    EstimatedShares(Estimates estimates, Dimensioning dimensioning) {
        this.estimates = estimates;
        this.dimensioning = dimensioning;
    }

    void check(Inspection inspection, Consumer<Diagnostic> found) {
        for (Site site : inspection.sites()) {
            for (Part part : site.parts()) {
                if (part.share() instanceof Share.Estimated estimated) {
                    check(site, part, estimated.equation(), found);
                }
            }
        }
    }

    private void check(Site site, Part part, TradeName name, Consumer<Diagnostic> found) {
        Optional<Meaning> meaning = estimates.vocabulary().meaning(name);
        if (meaning.filter(Meaning.Estimated.class::isInstance).isEmpty()) {
            List<TradeName> known =
                    estimates.equations().stream().map(Equation::name).toList();
            found.accept(Findings.suggest(
                            Diagnostic.of(EquationCode.UNKNOWN_ESTIMATE, site.at(part, Aspect.SHARE))
                                    .with("estimate", name),
                            name,
                            known)
                    .help(
                            meaning.isEmpty()
                                    ? "Or write it: estimate " + name + " = 71.5 % - 0.84 % per mm × back fat"
                                    : name + " is measured; write an estimate from it, and name that."));
            return;
        }
        dimensioning
                .of(name)
                .flatMap(dimensions -> dimensions.plain())
                .filter(plain -> plain != Dimension.SHARE)
                .ifPresent(plain -> found.accept(Diagnostic.of(EquationCode.NOT_A_SHARE, site.at(part, Aspect.SHARE))
                        .with("part", part.name())
                        .with("estimate", name)
                        .with("found", plain.words())
                        .help("Estimate it in per cent; a weight over a weight becomes one by 100 % × before it.")));
        boolean somethingGivesWay =
                !site.isDivided() || site.parts().stream().anyMatch(other -> other instanceof Part.Rest);
        if (!somethingGivesWay && !site.isUnsure()) {
            found.accept(Diagnostic.of(EquationCode.NOTHING_GIVES_WAY, site.at(part, Aspect.SHARE))
                    .with("part", part.name())
                    .with("cut", site.name())
                    .help("Write one of the other parts as the rest: rest -> mince"));
        }
    }
}
