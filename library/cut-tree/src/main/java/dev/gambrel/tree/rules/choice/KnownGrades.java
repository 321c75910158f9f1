package dev.gambrel.tree.rules.choice;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Way;
import dev.gambrel.tree.choice.Choice;
import dev.gambrel.tree.choice.Condition;
import dev.gambrel.tree.choice.Grade;
import dev.gambrel.tree.inspection.ChoiceCode;
import dev.gambrel.tree.inspection.Findings;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Site;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/** Each grade is declared once, with each of its values once; and a condition asks for a value that its grade has. */
public final class KnownGrades implements Rule {
    private static final int MOST_RELATED = 5;

    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        Map<TradeName, Set<TradeName>> grades =
                declared(inspection.tree().carcass().grades(), found);
        Map<TradeName, List<Asked>> undeclared = new LinkedHashMap<>();
        for (Site site : inspection.sites()) {
            for (Way way : site.ways()) {
                if (way.choice() instanceof Choice.When when && when.condition() instanceof Condition.Graded graded) {
                    Place at = site.at(way.work(), Aspect.CHOICE);
                    if (grades.containsKey(graded.grade())) {
                        checkValues(graded, grades.get(graded.grade()), at, found);
                    } else {
                        undeclared
                                .computeIfAbsent(graded.grade(), grade -> new ArrayList<>())
                                .add(new Asked(graded, at));
                    }
                }
            }
        }
        undeclared.forEach((grade, asked) -> found.accept(unknown(grade, asked, grades.keySet())));
    }

    /** A condition, and where it stands. */
    private record Asked(Condition.Graded condition, Place at) {}

    /** The values of each grade, as first declared. */
    private static Map<TradeName, Set<TradeName>> declared(List<Grade> grades, Consumer<Diagnostic> found) {
        Map<TradeName, Integer> first = new HashMap<>();
        Map<TradeName, Set<TradeName>> values = new LinkedHashMap<>();
        for (int i = 0; i < grades.size(); i++) {
            Grade grade = grades.get(i);
            Integer earlier = first.putIfAbsent(grade.name(), i);
            if (earlier != null) {
                found.accept(Diagnostic.of(ChoiceCode.DUPLICATE_GRADE, at(i))
                        .with("grade", grade.name())
                        .related(at(earlier), "the first one")
                        .help("Keep one of the two lines, with all values on it."));
            }
            values.putIfAbsent(grade.name(), distinct(grade, at(i), found));
        }
        return values;
    }

    private static Set<TradeName> distinct(Grade grade, Place at, Consumer<Diagnostic> found) {
        Set<TradeName> seen = new LinkedHashSet<>();
        for (TradeName value : grade.values()) {
            if (!seen.add(value)) {
                found.accept(Diagnostic.of(ChoiceCode.DUPLICATE_GRADE_VALUE, at)
                        .with("grade", grade.name())
                        .with("value", value)
                        .help("Take one of the two out."));
            }
        }
        return seen;
    }

    private static Place at(int index) {
        return new Place.InTree(TreePath.ROOT, Aspect.GRADE, index);
    }

    /** One finding for a grade, however often it is asked about. */
    private static Diagnostic unknown(TradeName grade, List<Asked> asked, Set<TradeName> declared) {
        Diagnostic finding =
                Diagnostic.of(ChoiceCode.UNKNOWN_GRADE, asked.get(0).at()).with("grade", grade);
        for (Asked also : asked.subList(1, Math.min(asked.size(), 1 + MOST_RELATED))) {
            finding = finding.related(also.at(), "also asked about here");
        }
        String values = asked.stream()
                .flatMap(each -> each.condition().named().stream())
                .distinct()
                .map(TradeName::text)
                .collect(Collectors.joining(", "));
        return Findings.suggestOrDeclare(finding, grade, declared, "grade " + grade + ", " + values);
    }

    private static void checkValues(
            Condition.Graded condition, Set<TradeName> values, Place at, Consumer<Diagnostic> found) {
        for (TradeName value : condition.named()) {
            if (!values.contains(value)) {
                Diagnostic finding = Diagnostic.of(ChoiceCode.UNKNOWN_GRADE_VALUE, at)
                        .with("grade", condition.grade())
                        .with("value", value);
                found.accept(Findings.suggest(finding, value, values));
            }
        }
    }
}
