package dev.gambrel.compiler.syntax;

import dev.gambrel.text.Span;
import java.util.List;

/** Something that the bench is told. */
public sealed interface BenchClause extends Clause.OfOneKindOfLine {
    /**
     * What comes off before it.
     *
     * @param part the part that comes first
     * @param span the place
     */
    record After(Name part, Span span) implements BenchClause {}

    /**
     * That left and right are alike.
     *
     * @param within by how much their weights may differ; none or one
     * @param span the place
     */
    record Matched(List<Amount> within, Span span) implements BenchClause {
        /** Copies the list. */
        public Matched {
            within = List.copyOf(within);
        }
    }

    /**
     * How many ribs.
     *
     * @param figure a number, or two
     * @param span the place
     */
    record RibCount(Figure figure, Span span) implements BenchClause {}

    /**
     * That it takes two people.
     *
     * @param span the place
     */
    record TwoPeople(Span span) implements BenchClause {}

    /**
     * That the fat is planed level.
     *
     * @param span the place
     */
    record Planed(Span span) implements BenchClause {}

    /**
     * That next to no fat is left.
     *
     * @param span the place
     */
    record PracticallyFree(Span span) implements BenchClause {}
}
