package dev.gambrel.yields.working;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Carcass;
import dev.gambrel.tree.Way;
import dev.gambrel.tree.choice.Choice;
import dev.gambrel.tree.choice.Condition;
import dev.gambrel.tree.choice.Grade;
import dev.gambrel.tree.choice.WeightRange;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Predicate;
import java.util.function.Supplier;
import java.util.stream.Collectors;

/** How much of a cut goes each of its ways. */
final class Chooser {
    /** What is known before any piece is weighed. */
    sealed interface Answer {
        /** One split for each way, in their order. */
        record Known(List<Split> splits) implements Answer {}

        /** A condition asks what a piece weighs. */
        record ToWeigh() implements Answer {}

        /** A condition asks for a grade that is not given, and no way is the rule. */
        record NotGiven(Diagnostic finding) implements Answer {}
    }

    private final Map<TreePath, List<Split>> orders;
    private final Map<TradeName, TradeName> grades;
    private final Supplier<Quantity> carcassWeight;

    Chooser(Map<TreePath, List<Split>> orders, Map<TradeName, TradeName> grades, Supplier<Quantity> carcassWeight) {
        this.orders = orders;
        this.grades = grades;
        this.carcassWeight = carcassWeight;
    }

    boolean isOrdered(TreePath cut) {
        return orders.containsKey(cut);
    }

    Answer of(TreePath cut, List<Way> ways, Carcass carcass) {
        if (isOrdered(cut)) {
            return new Answer.Known(orders.get(cut));
        }
        Optional<Condition> first =
                ways.stream().flatMap(way -> condition(way).stream()).findFirst();
        if (first.isEmpty()) {
            return new Answer.Known(whole(shares(ways)));
        } else if (first.get() instanceof Condition.PieceWeighs) {
            return new Answer.ToWeigh();
        } else if (first.get() instanceof Condition.Graded graded) {
            return byGrade(cut, ways, graded, carcass);
        }
        Quantity weight = carcassWeight.get();
        return new Answer.Known(conditioned(
                ways, condition -> range((Condition.Weighs) condition).holds(weight)));
    }

    private Answer byGrade(TreePath cut, List<Way> ways, Condition.Graded asked, Carcass carcass) {
        Grade grade = carcass.grade(asked.grade()).orElseThrow();
        Optional<TradeName> value = Optional.ofNullable(grades.get(grade.name()));
        boolean hasRule = ways.stream().anyMatch(way -> way.choice() instanceof Choice.AsARule);
        return value.isPresent() || hasRule
                ? new Answer.Known(conditioned(
                        ways,
                        condition -> value.filter(given -> grade.meets((Condition.Graded) condition, given))
                                .isPresent()))
                : new Answer.NotGiven(notGiven(cut, grade));
    }

    private static Diagnostic notGiven(TreePath cut, Grade grade) {
        String values = grade.values().stream().map(TradeName::text).collect(Collectors.joining(", "));
        return Diagnostic.of(WorkingCode.GRADE_NOT_GIVEN, new Place.InTree(cut, Aspect.NAME))
                .with("cut", cut.last())
                .with("grade", grade.name())
                .note("It can be: " + values + ".")
                .help("Give it for the run: " + grade.name() + " = "
                        + grade.values().get(0))
                .help("Or say in the specification which way is the rule.");
    }

    /** The splits of ways whose conditions ask what a piece weighs. */
    static List<Split> byWeight(List<Way> ways, PieceWeight piece) {
        return split(ways, condition -> piece.within(range((Condition.Weighs) condition)));
    }

    private static WeightRange range(Condition.Weighs condition) {
        return WeightRange.within(condition.bounds());
    }

    static List<Split> conditioned(List<Way> ways, Predicate<Condition> holds) {
        return split(ways, condition -> Split.of(holds.test(condition)));
    }

    /** Conditions take theirs; the rule takes what they leave. */
    private static List<Split> split(List<Way> ways, Function<Condition, Split> taken) {
        List<Split> splits = new ArrayList<>(ways.size());
        Split sum = Split.NONE;
        for (Way way : ways) {
            Split split = condition(way).map(taken).orElse(Split.NONE);
            splits.add(split);
            sum = sum.plus(split);
        }
        for (int i = 0; i < splits.size(); i++) {
            if (ways.get(i).choice() instanceof Choice.AsARule) {
                splits.set(i, sum.rest());
            }
        }
        return whole(splits);
    }

    /** Without conditions there is a rule, or there are shares. */
    private static List<Split> shares(List<Way> ways) {
        List<Split> splits = new ArrayList<>(ways.size());
        for (Way way : ways) {
            if (way.choice() instanceof Choice.OfPieces of) {
                double part = of.share().value() / 100;
                splits.add(new Split(part, part));
            } else {
                splits.add(Split.of(way.choice() instanceof Choice.AsARule));
            }
        }
        return splits;
    }

    /** What is next to nothing is left out, and the others make a whole. */
    private static List<Split> whole(List<Split> splits) {
        List<Split> kept = splits.stream()
                .map(split -> split.isNothing() ? Split.NONE : split)
                .toList();
        Split sum = kept.stream().reduce(Split.NONE, Split::plus);
        return kept.stream().map(split -> split.dividedBy(sum)).toList();
    }

    static Optional<Condition> condition(Way way) {
        return way.choice() instanceof Choice.When when ? Optional.of(when.condition()) : Optional.empty();
    }
}
