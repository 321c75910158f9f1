package dev.gambrel.tree.rules.mass;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Site;
import dev.gambrel.tree.inspection.TreeCode;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;

/** A share written of the carcass, or of a cut further up, agrees with the shares on the way within 0.05 point. */
public final class AgreeingShares implements Rule {
    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        for (Site site : inspection.sites()) {
            for (Part part : site.parts()) {
                if (part.share() instanceof Share.Stated stated && !site.isUnsure()) {
                    checkOthers(site, part, stated, found);
                }
            }
        }
    }

    private static void checkOthers(Site site, Part part, Share.Stated stated, Consumer<Diagnostic> found) {
        List<Share.Derived> others = stated.others();
        for (int i = 0; i < others.size(); i++) {
            Share.Derived written = others.get(i);
            Optional<Double> product = KnownBases.find(site, written.of())
                    .flatMap(site::shareOf)
                    .map(above -> above * stated.expected().mean());
            double tolerance = ClosedShares.TOLERANCE.doubleValue() + Site.ROUNDING;
            if (product.filter(Double::isFinite).isPresent()
                    && Math.abs(product.get() - written.expected().mean()) > tolerance) {
                Place at = new Place.InTree(site.path().then(part.name()), Aspect.DERIVED_SHARE, i);
                found.accept(contradiction(at, site, part, written, product.get()));
            }
        }
    }

    private static Diagnostic contradiction(Place at, Site site, Part part, Share.Derived written, double product) {
        Quantity worked = Quantity.rounded(new BigDecimal(product).setScale(2, RoundingMode.HALF_UP), Unit.PERCENT);
        return Diagnostic.of(TreeCode.SHARE_CONTRADICTION, at)
                .with("part", part.name())
                .with("written", Quantity.rounded(written.expected().exactMean(), Unit.PERCENT))
                .with("base", written.of())
                .with("product", worked)
                .related(site.at(part, Aspect.SHARE), "this share of the " + site.name() + " leads to " + worked)
                .help("Correct one of the two, or leave the second out: it is worked out from the first.");
    }
}
