package dev.gambrel.compiler.syntax;

import dev.gambrel.text.Span;
import java.util.List;

/** Something that a line of a measure or an estimate says besides its name. */
public sealed interface EstimateClause extends Clause.OfOneKindOfLine {
    /**
     * How an estimate is worked out.
     *
     * @param expression the arithmetic
     * @param span the place
     */
    record WorkedOut(WrittenExpression expression, Span span) implements EstimateClause {}

    /**
     * The unit in which something is told.
     *
     * @param unit as written
     * @param span the place
     */
    record InUnit(String unit, Span span) implements EstimateClause {}

    /**
     * A score: "1 = thin".
     *
     * @param number the figure
     * @param word the word that it stands for
     * @param span the place
     */
    record Score(Figure number, Name word, Span span) implements EstimateClause {}

    /**
     * How far a carcass strays from an estimate.
     *
     * @param deviation the figure after ±
     * @param span the place
     */
    record Spread(Amount deviation, Span span) implements EstimateClause {}

    /**
     * What an estimate holds for.
     *
     * @param of a measure or a carcass weight
     * @param range its range
     * @param span the place
     */
    record Holds(Name of, Figure range, Span span) implements EstimateClause {}

    /**
     * A limit that a result is taken to.
     *
     * @param least whether it is the least, or else the most
     * @param limit the figure
     * @param when the measure and its score for which it holds; none or two
     * @param span the place
     */
    record Bound(boolean least, Amount limit, List<Name> when, Span span) implements EstimateClause {
        /** Copies the list. */
        public Bound {
            when = List.copyOf(when);
        }
    }

    /**
     * The estimate that gives a share.
     *
     * @param estimate its name
     * @param span the place
     */
    record EstimatedBy(Name estimate, Span span) implements EstimateClause {}
}
