package dev.gambrel.tree.rules.mass;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Visible;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.Source;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Site;
import java.math.BigDecimal;
import java.math.MathContext;
import java.math.RoundingMode;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Collectors;

/** What can be done where shares do not close. Repairs are named; none is made unasked. */
final class ClosureRepairs {
    private static final int MOST_SCALED = 12;
    private static final BigDecimal ALL = BigDecimal.valueOf(100);

    private ClosureRepairs() {}

    static Diagnostic offer(Diagnostic finding, Site site, Inspection inspection, BigDecimal over) {
        Diagnostic fuller = blameSource(finding, site, inspection);
        if (over.signum() < 0) {
            fuller = fuller.help("Add the part that is missing, or a line such as: rest -> mince");
        } else {
            fuller = fuller.help("Leave the figure out of one part and write it as the rest, or correct a share.");
        }
        boolean nearlyCloses = over.abs().compareTo(new BigDecimal(5)) <= 0;
        return nearlyCloses && site.parts().size() <= MOST_SCALED ? fuller.help(scaled(site)) : fuller;
    }

    private static Diagnostic blameSource(Diagnostic finding, Site site, Inspection inspection) {
        Set<List<TradeName>> cited = new LinkedHashSet<>();
        for (Part part : site.parts()) {
            cited.add(part.share() instanceof Share.Stated stated ? stated.sources() : List.of());
        }
        List<TradeName> only = cited.iterator().next();
        if (cited.size() != 1 || only.size() != 1) {
            return finding;
        }
        return inspection
                .tree()
                .source(only.get(0))
                .filter(source -> source.kind() == Source.Kind.PUBLISHED)
                .map(source -> finding.note("All of these figures are from " + source.name()
                        + ", so the source itself does not close as printed: " + Visible.text(source.citation())))
                .orElse(finding);
    }

    private static String scaled(Site site) {
        BigDecimal sum = ClosedShares.sum(site.parts());
        String figures = site.parts().stream()
                .filter(part -> part.share() instanceof Share.Stated)
                .map(part -> part.name() + " " + scaled(part, sum))
                .collect(Collectors.joining(", "));
        return "Or scale all of them to 100 %: " + figures + ".";
    }

    private static String scaled(Part part, BigDecimal sum) {
        BigDecimal share = ((Share.Stated) part.share()).expected().exactMean();
        return share.multiply(ALL)
                .divide(sum, MathContext.DECIMAL64)
                .setScale(3, RoundingMode.HALF_UP)
                .toPlainString();
    }
}
