package dev.gambrel.tree.rules;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Site;
import dev.gambrel.tree.inspection.TreeCode;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;

/**
 * The parts of one cut have different names, and so have its portions, so that a path finds one thing. Rests are counted
 * elsewhere.
 */
final class DistinctNames implements Rule {
    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        for (Site site : inspection.sites()) {
            Map<TradeName, Integer> seen = new HashMap<>();
            for (Part part : site.parts()) {
                int earlier = part instanceof Part.Rest ? 0 : seen.merge(part.name(), 1, Integer::sum) - 1;
                if (earlier > 0) {
                    found.accept(duplicate(site.path(), part.name(), site.name(), earlier));
                }
                if (part instanceof Cut cut) {
                    checkPortions(site.path().then(cut.name()), cut, found);
                }
            }
        }
    }

    private static void checkPortions(TreePath cut, Cut of, Consumer<Diagnostic> found) {
        Map<TradeName, Integer> seen = new HashMap<>();
        for (Portion portion : of.portions()) {
            int earlier = seen.merge(portion.name(), 1, Integer::sum) - 1;
            if (earlier > 0) {
                found.accept(duplicate(cut, portion.name(), cut.last(), earlier));
            }
        }
    }

    private static Diagnostic duplicate(TreePath above, TradeName name, String whole, int earlier) {
        var here = new Place.InTree(above.then(name), Aspect.NAME, earlier);
        return Diagnostic.of(TreeCode.DUPLICATE_PART, here)
                .with("part", name)
                .with("above", whole)
                .related(new Place.InTree(here.path(), Aspect.NAME), "first written here")
                .help("Give one of them another name, or take one line out.");
    }
}
