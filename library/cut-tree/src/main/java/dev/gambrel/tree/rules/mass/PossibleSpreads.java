package dev.gambrel.tree.rules.mass;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Site;
import dev.gambrel.tree.inspection.TreeCode;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.List;
import java.util.OptionalDouble;
import java.util.function.Consumer;

/**
 * Where stated shares must close to 100 %, no standard deviation exceeds the sum of the others.
 *
 * <p>The condition is necessary and sufficient: vectors of those lengths can sum to zero exactly when the longest is not
 * longer than the others together.
 */
public final class PossibleSpreads implements Rule {
    /** Ranges give standard deviations in floating point; equality is meant to be allowed. */
    private static final double ROUNDING = 1e-9;

    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        for (Site site : inspection.sites()) {
            boolean closes = site.isDivided()
                    && !site.isUnsure()
                    && ClosedShares.closes(site)
                    && site.parts().stream().noneMatch(part -> part instanceof Part.Rest);
            if (closes) {
                checkSpreads(site, found);
            }
        }
    }

    private static void checkSpreads(Site site, Consumer<Diagnostic> found) {
        List<Part> spread = site.parts().stream()
                .filter(part -> deviation(part).isPresent())
                .toList();
        double total = spread.stream()
                .mapToDouble(part -> deviation(part).getAsDouble())
                .sum();
        if (spread.size() == 1 && total > 0 && site.parts().size() > 1) {
            found.accept(Diagnostic.of(TreeCode.LONE_SPREAD, site.at(spread.get(0), Aspect.SHARE))
                    .with("part", spread.get(0).name())
                    .with("cut", site.name())
                    .help("State the spread of the other parts too, or write one of them as the rest."));
        } else if (spread.size() == site.parts().size()) {
            spread.stream()
                    .filter(part -> exceedsOthers(deviation(part).getAsDouble(), total))
                    .forEach(part -> found.accept(impossible(site, part, total)));
        }
    }

    private static boolean exceedsOthers(double deviation, double total) {
        return deviation > (total - deviation) * (1 + ROUNDING);
    }

    private static Diagnostic impossible(Site site, Part part, double total) {
        double own = deviation(part).getAsDouble();
        return Diagnostic.of(TreeCode.IMPOSSIBLE_SPREAD, site.at(part, Aspect.SHARE))
                .with("part", part.name())
                .with("cut", site.name())
                .with("spread", points(own))
                .with("others", points(total - own))
                .note("What one part gains the others lose, so the largest spread cannot exceed the sum of the others.")
                .help("Lower this spread, or raise those of the parts that give way to it.");
    }

    private static Quantity points(double percent) {
        return Quantity.rounded(
                new BigDecimal(percent).round(new MathContext(3)).stripTrailingZeros(), Unit.PERCENT);
    }

    /** A spread that is itself out of range is another rule's finding. */
    private static OptionalDouble deviation(Part part) {
        OptionalDouble spread = part.share() instanceof Share.Stated stated
                ? stated.expected().standardDeviation()
                : OptionalDouble.empty();
        boolean plausible = spread.isPresent()
                && spread.getAsDouble() >= 0
                && !PlausibleShares.straysTooFar(((Share.Stated) part.share()).expected());
        return plausible ? spread : OptionalDouble.empty();
    }
}
