package dev.gambrel.yields.comparison.fact;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.tree.choice.Bound;
import dev.gambrel.tree.choice.Choice;
import dev.gambrel.tree.choice.Condition;
import java.util.List;
import java.util.stream.Stream;

/** When a cut is worked in a way. */
final class ChoiceFacts {
    private ChoiceFacts() {}

    static void add(Choice choice, Facts facts) {
        if (choice instanceof Choice.OfPieces of) {
            facts.figure(
                    "worked so",
                    Aspect.CHOICE,
                    0,
                    List.of("of pieces", Exact.of(of.share())),
                    of.share() + " of pieces");
        } else if (choice instanceof Choice.When when) {
            facts.figure("worked so", Aspect.CHOICE, 0, value(when.condition()), "when " + when.condition());
        } else {
            String words = choice instanceof Choice.AsARule ? "as a rule" : "on request";
            facts.figure("worked so", Aspect.CHOICE, 0, List.of(words), words);
        }
    }

    private static List<String> value(Condition condition) {
        if (condition instanceof Condition.Weighs weighs) {
            Stream<String> bounds =
                    weighs.bounds().stream().map(ChoiceFacts::value).sorted();
            return Stream.concat(Stream.of(condition.subject()), bounds).toList();
        } else if (condition instanceof Condition.GradeFrom from) {
            return List.of(
                    "from", from.grade().key(), from.first().key(), from.last().key());
        }
        Condition.GradeIs is = (Condition.GradeIs) condition;
        return Stream.concat(Stream.of("is", is.grade().key()), Exact.unordered(is.named()).stream())
                .toList();
    }

    private static String value(Bound bound) {
        return bound.kind().words() + " " + Exact.of(bound.weight());
    }
}
