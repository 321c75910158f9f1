package dev.gambrel.tree.rules.bench;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.bench.Matching;
import dev.gambrel.tree.inspection.BenchCode;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Site;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;

/** Only what there are two of can be matched. */
public final class MatchedPairs implements Rule {
    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        Map<Site, Integer> pieces = new HashMap<>();
        for (Site site : inspection.sites()) {
            int here = site.isCarcass() ? 1 : site.cut().pieces().perCarcass(pieces.get(site.above()));
            pieces.put(site, here);
            for (Part part : site.parts()) {
                if (part instanceof Cut cut) {
                    check(site, cut, cut.pieces().perCarcass(here), found);
                }
            }
        }
    }

    private static void check(Site site, Cut cut, int pieces, Consumer<Diagnostic> found) {
        Matching matching = cut.description().bench().matching();
        if (pieces == 1 && !(matching instanceof Matching.NotStated)) {
            found.accept(Diagnostic.of(BenchCode.PAIR_OF_ONE, site.at(cut, Aspect.MATCHING))
                    .with("cut", cut.name())
                    .help("If there are two of it, write two per carcass; if not, take this out."));
        }
        if (matching instanceof Matching.Within within) {
            Quantity difference = within.difference();
            if (difference.amount().signum() < 0) {
                found.accept(Diagnostic.of(BenchCode.BELOW_NOTHING, site.at(cut, Aspect.MATCHING))
                        .with("what", "difference between left and right")
                        .with("figure", difference)
                        .help("Write it without the minus."));
            }
        }
    }
}
