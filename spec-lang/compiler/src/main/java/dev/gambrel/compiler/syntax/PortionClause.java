package dev.gambrel.compiler.syntax;

import dev.gambrel.text.Span;
import dev.gambrel.tree.portion.Precedence;
import java.util.List;

/** Something that a portion line says. */
public sealed interface PortionClause extends Clause.OfOneKindOfLine {
    /**
     * How thick.
     *
     * @param figure the figure
     * @param span the place
     */
    record Thick(Figure figure, Span span) implements PortionClause {}

    /**
     * A range of thicknesses that is accepted.
     *
     * @param low the low end
     * @param high the high end
     * @param span the place
     */
    record ThickBetween(Amount low, Amount high, Span span) implements PortionClause {}

    /**
     * At least or at most so much.
     *
     * @param least whether it is the least that is accepted
     * @param amount the limit
     * @param thick whether it limits the thickness
     * @param span the place
     */
    record Bound(boolean least, Amount amount, boolean thick, Span span) implements PortionClause {}

    /**
     * At least or at most so many from something.
     *
     * @param least whether it is the least that is accepted
     * @param amount the number
     * @param whole what they are counted from
     * @param span the place
     */
    record BoundFrom(boolean least, Amount amount, Name whole, Span span) implements PortionClause {}

    /**
     * Into how many.
     *
     * @param number as written
     * @param span the place
     */
    record Into(String number, Span span) implements PortionClause {}

    /**
     * Which of two figures rules.
     *
     * @param rules weight or thickness
     * @param span the place
     */
    record Rules(Precedence rules, Span span) implements PortionClause {}

    /**
     * The smallest piece that still counts.
     *
     * @param weight the weight
     * @param span the place
     */
    record Smallest(Amount weight, Span span) implements PortionClause {}

    /**
     * Where the first and the last slice go.
     *
     * @param weight what both weigh; none or one
     * @param stream the stream
     * @param span the place
     */
    record EndPieces(List<Figure> weight, Name stream, Span span) implements PortionClause {
        /** Copies the list. */
        public EndPieces {
            weight = List.copyOf(weight);
        }
    }

    /**
     * What saw or knife takes at each cut.
     *
     * @param width the length
     * @param span the place
     */
    record Kerf(Amount width, Span span) implements PortionClause {}

    /**
     * The length that is sliced.
     *
     * @param figure the length
     * @param span the place
     */
    record Length(Figure figure, Span span) implements PortionClause {}

    /**
     * Across or along something.
     *
     * @param words as written
     * @param span the place
     */
    record Direction(String words, Span span) implements PortionClause {}

    /**
     * With so many ties.
     *
     * @param times as written
     * @param span the place
     */
    record Tied(String times, Span span) implements PortionClause {}

    /**
     * With a tie at every so much, or in a net of a size.
     *
     * @param netted whether it is a net
     * @param length the spacing or the size
     * @param span the place
     */
    record Held(boolean netted, Amount length, Span span) implements PortionClause {}

    /**
     * How many are packed together.
     *
     * @param number as written
     * @param container what they are packed in
     * @param span the place
     */
    record Packed(String number, Name container, Span span) implements PortionClause {}

    /**
     * Something on the scale that is not meat.
     *
     * @param what what it is
     * @param weight how much it weighs
     * @param span the place
     */
    record Tare(Name what, Amount weight, Span span) implements PortionClause {}
}
