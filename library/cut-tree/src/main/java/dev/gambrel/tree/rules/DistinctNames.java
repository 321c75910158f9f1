package dev.gambrel.tree.rules;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Site;
import dev.gambrel.tree.inspection.TreeCode;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;

/** The parts of one cut have different names, so that a path finds one part. Rests are counted elsewhere. */
final class DistinctNames implements Rule {
    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        for (Site site : inspection.sites()) {
            Map<TradeName, Integer> seen = new HashMap<>();
            for (Part part : site.parts()) {
                int earlier = part instanceof Part.Rest ? 0 : seen.merge(part.name(), 1, Integer::sum) - 1;
                if (earlier > 0) {
                    found.accept(duplicate(site, part, earlier));
                }
            }
        }
    }

    private static Diagnostic duplicate(Site site, Part part, int earlier) {
        var here = new Place.InTree(site.path().then(part.name()), Aspect.NAME, earlier);
        return Diagnostic.of(TreeCode.DUPLICATE_PART, here)
                .with("part", part.name())
                .with("above", site.name())
                .related(site.at(part, Aspect.NAME), "first written here")
                .help("Give one of them another name, or take one line out.");
    }
}
