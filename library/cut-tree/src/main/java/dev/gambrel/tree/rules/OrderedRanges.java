package dev.gambrel.tree.rules;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.tree.BasisStep;
import dev.gambrel.tree.Carcass;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.WeightBand;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Site;
import dev.gambrel.tree.inspection.TreeCode;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;

/** A range runs from low to high, and a spread is not less than nothing. */
final class OrderedRanges implements Rule {
    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        checkCarcass(inspection.tree().carcass(), found);
        for (Site site : inspection.sites()) {
            for (Part part : site.parts()) {
                if (part.share() instanceof Share.Stated stated) {
                    checkExpected(stated.expected(), () -> site.at(part, Aspect.SHARE), found);
                }
                if (part instanceof Cut cut) {
                    checkPortions(site, cut, found);
                }
            }
        }
    }

    private static void checkCarcass(Carcass carcass, Consumer<Diagnostic> found) {
        if (carcass.band() instanceof WeightBand.Stated band) {
            checkOrder(band.low(), band.high(), () -> new Place.InTree(TreePath.ROOT, Aspect.BAND), found);
        }
        List<BasisStep> steps = carcass.steps();
        for (int i = 0; i < steps.size(); i++) {
            Place at = new Place.InTree(TreePath.ROOT, Aspect.STEP, i);
            steps.get(i).shares().forEach(share -> checkExpected(share, () -> at, found));
        }
    }

    private static void checkPortions(Site site, Cut cut, Consumer<Diagnostic> found) {
        for (Portion portion : cut.portions()) {
            TreePath at = site.path().then(cut.name()).then(portion.name());
            checkExpected(portion.target(), () -> new Place.InTree(at, Aspect.SHARE), found);
            if (portion.range() instanceof Portion.Range.Stated range) {
                checkOrder(range.low(), range.high(), () -> new Place.InTree(at, Aspect.LIMIT), found);
            }
        }
    }

    private static void checkExpected(Expected expected, Supplier<Place> at, Consumer<Diagnostic> found) {
        if (expected instanceof Expected.CentralRange range) {
            checkOrder(range.low(), range.high(), at, found);
        } else if (expected instanceof Expected.PlusMinus spread
                && spread.deviation().common().signum() < 0) {
            found.accept(Diagnostic.of(TreeCode.NEGATIVE_SPREAD, at.get())
                    .with("spread", spread.deviation())
                    .help("Write the spread as a plain figure after ±."));
        }
    }

    private static void checkOrder(Quantity low, Quantity high, Supplier<Place> at, Consumer<Diagnostic> found) {
        if (low.compareTo(high) > 0) {
            found.accept(Diagnostic.of(TreeCode.REVERSED_RANGE, at.get())
                    .with("low", low)
                    .with("high", high)
                    .help("Write the smaller figure first: " + high + " to " + low + "."));
        }
    }
}
