package dev.gambrel.yields.working;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Carcass;
import dev.gambrel.tree.choice.Grade;
import dev.gambrel.tree.inspection.Findings;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The grades that a run gives, held against those that are declared. */
final class Grades {
    private Grades() {}

    /** The values given, by grade; what is wrong goes to the list. */
    static Map<TradeName, TradeName> find(List<Working.Given> given, Carcass carcass, List<Diagnostic> found) {
        Map<TradeName, TradeName> values = new HashMap<>();
        List<TradeName> known = carcass.grades().stream().map(Grade::name).toList();
        for (Working.Given each : given) {
            Optional<Grade> grade = carcass.grade(each.grade());
            Place at = new Place.InTree(TreePath.ROOT, Aspect.GRADE, Math.max(0, known.indexOf(each.grade())));
            if (grade.isEmpty()) {
                Diagnostic finding =
                        Diagnostic.of(WorkingCode.NO_SUCH_GRADE, at).with("grade", each.grade());
                found.add(Findings.suggest(finding, each.grade(), known));
            } else if (!grade.get().values().contains(each.value())) {
                Diagnostic finding = Diagnostic.of(WorkingCode.NO_SUCH_VALUE, at)
                        .with("grade", each.grade())
                        .with("value", each.value());
                found.add(Findings.suggest(finding, each.value(), grade.get().values()));
            } else if (values.putIfAbsent(each.grade(), each.value()) != null) {
                found.add(Orders.twice(at, each.grade()));
            }
        }
        return values;
    }
}
