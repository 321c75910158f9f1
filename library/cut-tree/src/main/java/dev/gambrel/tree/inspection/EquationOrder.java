package dev.gambrel.tree.inspection;

import dev.gambrel.text.TradeName;
import dev.gambrel.tree.estimate.Adjustment;
import dev.gambrel.tree.estimate.Equation;
import dev.gambrel.tree.estimate.Expression;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;

/** Equations so that each comes after those that it names. Costs O(terms). */
public final class EquationOrder {
    private final Map<Equation, Set<Equation>> named = new LinkedHashMap<>();
    private final List<Equation> sorted = new ArrayList<>();
    private final Set<Equation> left;

    /** Sorts some equations; what their names stand for is told by the vocabulary. */
    public EquationOrder(List<Equation> equations, Vocabulary vocabulary) {
        Map<Equation, List<Equation>> users = new LinkedHashMap<>();
        Map<Equation, Integer> open = new LinkedHashMap<>();
        for (Equation equation : equations) {
            Set<Equation> uses = uses(equation, vocabulary);
            named.put(equation, uses);
            open.put(equation, uses.size());
            uses.forEach(
                    used -> users.computeIfAbsent(used, u -> new ArrayList<>()).add(equation));
        }
        left = new LinkedHashSet<>(named.keySet());
        Deque<Equation> ready = new ArrayDeque<>();
        open.forEach((equation, count) -> {
            if (count == 0) {
                ready.add(equation);
            }
        });
        while (!ready.isEmpty()) {
            Equation next = ready.remove();
            sorted.add(next);
            left.remove(next);
            for (Equation user : users.getOrDefault(next, List.of())) {
                if (open.merge(user, -1, Integer::sum) == 0) {
                    ready.add(user);
                }
            }
        }
    }

    private static Set<Equation> uses(Equation equation, Vocabulary vocabulary) {
        Set<Equation> uses = new LinkedHashSet<>();
        for (TradeName name : names(equation)) {
            if (vocabulary.meaning(name).orElse(null) instanceof Vocabulary.Meaning.Estimated estimated) {
                uses.add(estimated.equation());
            }
        }
        return uses;
    }

    /** What an equation names, its conditions included. */
    public static Set<TradeName> names(Equation equation) {
        Set<TradeName> names = new LinkedHashSet<>();
        for (Expression term : Terms.of(equation.expression()).all()) {
            if (term instanceof Expression.Named named) {
                names.add(named.name());
            }
        }
        for (Adjustment adjustment : equation.adjustments()) {
            condition(adjustment).ifPresent(scored -> names.add(scored.measure()));
        }
        return names;
    }

    /** The score that an adjustment waits for, if it waits for one. */
    public static Optional<Adjustment.Condition.Scored> condition(Adjustment adjustment) {
        Adjustment.Condition when = new Adjustment.Condition.Always();
        if (adjustment instanceof Adjustment.AtLeast least) {
            when = least.when();
        } else if (adjustment instanceof Adjustment.AtMost most) {
            when = most.when();
        }
        return when instanceof Adjustment.Condition.Scored scored ? Optional.of(scored) : Optional.empty();
    }

    /** All that do not go round, each after those that it names. */
    public List<Equation> sorted() {
        return List.copyOf(sorted);
    }

    /** One circle of equations, each naming the next and the last the first; empty if there is none. */
    public List<Equation> circle() {
        if (left.isEmpty()) {
            return List.of();
        }
        List<Equation> walked = new ArrayList<>();
        Equation at = left.iterator().next();
        Set<Equation> seen = new LinkedHashSet<>();
        while (seen.add(at)) {
            walked.add(at);
            at = named.get(at).stream().filter(left::contains).findFirst().orElseThrow();
        }
        return List.copyOf(walked.subList(walked.indexOf(at), walked.size()));
    }
}
