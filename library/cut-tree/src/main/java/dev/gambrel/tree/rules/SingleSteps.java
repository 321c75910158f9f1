package dev.gambrel.tree.rules;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.BasisStep;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.TreeCode;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** From each basis one step leads on, so that a weight on it has one way to go. */
final class SingleSteps implements Rule {
    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        Map<Basis, Integer> first = new EnumMap<>(Basis.class);
        List<BasisStep> steps = inspection.tree().carcass().steps();
        for (int i = 0; i < steps.size(); i++) {
            Integer earlier = first.putIfAbsent(steps.get(i).from(), i);
            if (earlier != null) {
                found.accept(Diagnostic.of(TreeCode.STEP_TWICE, new Place.InTree(TreePath.ROOT, Aspect.STEP, i))
                        .with("from", steps.get(i).from().words())
                        .related(new Place.InTree(TreePath.ROOT, Aspect.STEP, earlier), "written first")
                        .help("Keep one of the two lines."));
            }
        }
    }
}
