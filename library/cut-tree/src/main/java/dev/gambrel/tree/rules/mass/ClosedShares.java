package dev.gambrel.tree.rules.mass;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.inspection.Findings;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.ShareColumn;
import dev.gambrel.tree.inspection.Site;
import dev.gambrel.tree.inspection.TreeCode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.function.Consumer;

/**
 * The parts of what is divided are all of it: they sum to 100 %, within 0.05 point, or one rest takes what is left.
 */
public final class ClosedShares implements Rule {
    /** Half of the last place of figures printed to a tenth of a per cent. */
    static final BigDecimal TOLERANCE = new BigDecimal("0.05");

    private static final BigDecimal ALL = BigDecimal.valueOf(100);

    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        for (Site site : inspection.sites()) {
            List<Part> rests = site.parts().stream()
                    .filter(part -> part instanceof Part.Rest)
                    .toList();
            boolean canTell = !site.isUnsure() && !site.parts().isEmpty() && !site.hasWays();
            if (canTell && rests.size() > 1) {
                found.accept(twoRests(site));
            } else if (canTell && allPlausible(site)) {
                boolean takesTheRest = !rests.isEmpty() || !site.isDivided();
                if (takesTheRest || !isEstimated(site)) {
                    checkSum(site, takesTheRest, inspection, found);
                }
            }
        }
    }

    private static Diagnostic twoRests(Site site) {
        var second = new Place.InTree(site.path().then(Part.Rest.NAME), Aspect.NAME, 1);
        return Diagnostic.of(TreeCode.TWO_RESTS, second)
                .with("cut", site.name())
                .related(new Place.InTree(second.path(), Aspect.NAME, 0), "the first rest")
                .help("Give one of the two a share, and leave the other as the rest.");
    }

    /** Shares that are missing, or not between nothing and all, are other rules' findings; a trim may be without. */
    private static boolean allPlausible(Site site) {
        return site.parts().stream()
                .allMatch(part -> part instanceof Part.Rest
                        || part.share() instanceof Share.Estimated
                        || part.share() instanceof Share.Stated stated && isPlausible(stated)
                        || part instanceof Part.Trim && part.share() instanceof Share.NotStated);
    }

    /** That nothing gives way to an estimated share is another rule's finding. */
    private static boolean isEstimated(Site site) {
        return site.parts().stream().anyMatch(part -> part.share() instanceof Share.Estimated);
    }

    private static boolean isPlausible(Share.Stated share) {
        BigDecimal mean = share.expected().exactMean();
        return mean.signum() >= 0 && mean.compareTo(ALL) <= 0;
    }

    /** Whether all that is stated sums to 100 %, within what is allowed. */
    static boolean closes(Site site) {
        return sum(site.parts()).subtract(ALL).abs().compareTo(TOLERANCE) <= 0;
    }

    private static void checkSum(
            Site site, boolean somethingTakesTheRest, Inspection inspection, Consumer<Diagnostic> found) {
        BigDecimal sum = sum(site.parts());
        BigDecimal over = sum.subtract(ALL);
        if (somethingTakesTheRest) {
            if (over.signum() > 0) {
                found.accept(ShareColumn.under(Diagnostic.of(TreeCode.NEGATIVE_REST, site.at(Aspect.NAME)), site)
                        .with("cut", site.name())
                        .with("sum", percent(sum))
                        .help("Lower the shares that are too high, or take the rest out."));
            }
        } else if (over.abs().compareTo(TOLERANCE) > 0) {
            found.accept(ClosureRepairs.offer(notClosed(site, sum, over), site, inspection, over));
        }
    }

    private static Diagnostic notClosed(Site site, BigDecimal sum, BigDecimal over) {
        Diagnostic finding = Diagnostic.of(TreeCode.SUM_NOT_100, site.at(Aspect.NAME))
                .with("cut", site.name())
                .with("sum", percent(sum))
                .with(
                        "gap",
                        Findings.figure(over.abs().stripTrailingZeros())
                                + (over.abs().compareTo(BigDecimal.ONE) == 0 ? " point" : " points"))
                .with("way", over.signum() > 0 ? "much" : "little");
        return ShareColumn.under(finding, site);
    }

    static BigDecimal sum(List<Part> parts) {
        BigDecimal sum = BigDecimal.ZERO;
        for (Part part : parts) {
            if (part.share() instanceof Share.Stated stated) {
                sum = sum.add(stated.expected().exactMean(), MathContext.DECIMAL128);
            }
        }
        return sum;
    }

    private static Quantity percent(BigDecimal value) {
        return Quantity.rounded(value, Unit.PERCENT);
    }
}
