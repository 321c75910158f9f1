package dev.gambrel.tree.rules.mass;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.BasisStep;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.SourceLean;
import dev.gambrel.tree.Stream;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Site;
import dev.gambrel.tree.inspection.TreeCode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.function.Consumer;
import java.util.function.Supplier;

/**
 * A share lies between nothing and all, and so does a lean figure; and it strays no further than one can that never leaves
 * those bounds: its variance is at most m (100 − m), that of a share which is either nothing or all.
 */
public final class PlausibleShares implements Rule {
    /** Standard deviations are worked out in floating point. */
    private static final double ROUNDING = 1e-9;

    private static final BigDecimal ALL = BigDecimal.valueOf(100);

    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        List<BasisStep> steps = inspection.tree().carcass().steps();
        for (int i = 0; i < steps.size(); i++) {
            Place at = new Place.InTree(TreePath.ROOT, Aspect.STEP, i);
            steps.get(i).shares().forEach(share -> checkShare(share, () -> at, found));
        }
        List<Stream> streams = inspection.tree().streams();
        for (int i = 0; i < streams.size(); i++) {
            if (streams.get(i).lean() instanceof Stream.Lean.Stated lean) {
                Place at = new Place.InTree(TreePath.ROOT, Aspect.LEAN, i);
                checkPercent(lean.percent().common(), () -> at, found);
            }
        }
        for (Site site : inspection.sites()) {
            for (Part part : site.parts()) {
                if (part.share() instanceof Share.Stated stated) {
                    checkShare(stated.expected(), () -> site.at(part, Aspect.SHARE), found);
                }
                if (part.home() instanceof Home.ToStream to && to.lean() instanceof SourceLean.Stated lean) {
                    checkShare(lean.percent(), () -> site.at(part, Aspect.LEAN), found);
                }
            }
        }
    }

    private static void checkShare(Expected expected, Supplier<Place> at, Consumer<Diagnostic> found) {
        checkPercent(expected.exactMean(), at, found);
        if (straysTooFar(expected)) {
            found.accept(Diagnostic.of(TreeCode.SPREAD_TOO_LARGE, at.get())
                    .with("spread", Quantity.rounded(spreadOf(expected), Unit.PERCENT))
                    .with("share", Quantity.rounded(expected.exactMean(), Unit.PERCENT))
                    .help("A spread is one standard deviation, usually a point or so; look for a slipped point."));
        }
    }

    /** Whether a share between nothing and all strays further than one can that stays there. */
    static boolean straysTooFar(Expected share) {
        double mean = share.mean();
        double deviation = share.standardDeviation().orElse(0);
        return mean >= 0 && mean <= 100 && deviation > Math.sqrt(mean * (100 - mean)) * (1 + ROUNDING) + ROUNDING;
    }

    private static BigDecimal spreadOf(Expected expected) {
        if (expected instanceof Expected.CentralRange range) {
            BigDecimal width = range.high().common().subtract(range.low().common());
            return width.divide(new BigDecimal(2 * Expected.NORMAL_95), new MathContext(3));
        }
        return ((Expected.PlusMinus) expected).deviation().common();
    }

    private static void checkPercent(BigDecimal percent, Supplier<Place> at, Consumer<Diagnostic> found) {
        if (percent.signum() < 0 || percent.compareTo(ALL) > 0) {
            found.accept(
                    Diagnostic.of(TreeCode.SHARE_OUT_OF_RANGE, at.get())
                            .with("share", Quantity.rounded(percent, Unit.PERCENT))
                            .help(
                                    "Nothing is less than none or more than all of what it is a share of; look for a slipped point."));
        }
    }
}
