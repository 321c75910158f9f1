package dev.gambrel.json.trees;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.tree.choice.Bound;
import dev.gambrel.tree.choice.Choice;
import dev.gambrel.tree.choice.Condition;
import dev.gambrel.tree.choice.Grade;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** When cuts are worked in a way, and what conditions ask about. */
final class Choices {
    private Choices() {}

    static Arbitrary<Choice> choices() {
        return Arbitraries.oneOf(
                Arbitraries.create(Choice.AsARule::new),
                Figures.quantities(Dimension.SHARE).map(Choice.OfPieces::new),
                conditions().map(Choice.When::new),
                Arbitraries.create(Choice.OnRequest::new));
    }

    static Arbitrary<Grade> grades() {
        return Combinators.combine(Words.names(), Words.nameLists()).as(Grade::new);
    }

    private static Arbitrary<Condition> conditions() {
        Arbitrary<List<Bound>> bounds =
                Words.few(Combinators.combine(Arbitraries.of(Bound.Kind.values()), Figures.quantities(Dimension.WEIGHT))
                        .as(Bound::new));
        return Arbitraries.oneOf(
                bounds.map(Condition.PieceWeighs::new),
                bounds.map(Condition.CarcassWeighs::new),
                Combinators.combine(Words.names(), Words.nameLists()).as(Condition.GradeIs::new),
                Combinators.combine(Words.names(), Words.names(), Words.names()).as(Condition.GradeFrom::new));
    }
}
