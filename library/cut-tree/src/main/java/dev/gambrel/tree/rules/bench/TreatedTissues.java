package dev.gambrel.tree.rules.bench;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.TrimRule;
import dev.gambrel.tree.bench.Treatment;
import dev.gambrel.tree.inspection.BenchCode;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Site;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** A tissue that is scored or left on is not removed as well. */
public final class TreatedTissues implements Rule {
    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        for (Site site : inspection.sites()) {
            if (!site.isCarcass()
                    && !site.cut().description().bench().treatments().isEmpty()) {
                check(site, site.cut().description().bench().treatments(), found);
            }
        }
    }

    private static void check(Site site, List<Treatment> treatments, Consumer<Diagnostic> found) {
        Map<TradeName, Part> removed = new HashMap<>();
        for (Part part : site.parts()) {
            if (part instanceof Part.Trim trim && trim.rule() instanceof TrimRule.Removal removal) {
                removed.put(removal.tissue(), part);
            }
        }
        for (int i = 0; i < treatments.size(); i++) {
            Treatment treatment = treatments.get(i);
            if (removed.containsKey(treatment.tissue())) {
                found.accept(
                        Diagnostic.of(BenchCode.TREATED_AND_REMOVED, new Place.InTree(site.path(), Aspect.TREATMENT, i))
                                .with("tissue", treatment.tissue())
                                .with("cut", site.name())
                                .with("treatment", treatment.kind().words())
                                .related(site.at(removed.get(treatment.tissue()), Aspect.NAME), "removed here")
                                .help("Keep one of the two lines."));
            }
        }
    }
}
