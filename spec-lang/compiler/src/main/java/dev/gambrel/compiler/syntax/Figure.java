package dev.gambrel.compiler.syntax;

import dev.gambrel.text.Span;
import java.util.List;

/**
 * A figure with what follows it.
 *
 * @param amount the figure, or the low end of a range
 * @param more its spread or high end
 * @param of what it is a share of: one name, or none
 * @param span all of it
 */
public record Figure(Amount amount, More more, List<Name> of, Span span) {
    /** Copies the list. */
    public Figure {
        of = List.copyOf(of);
    }

    /** What follows the first amount. */
    public sealed interface More {
        /** Nothing. */
        record Nothing() implements More {}

        /**
         * A spread after ±.
         *
         * @param amount the spread
         */
        record PlusMinus(Amount amount) implements More {}

        /**
         * The high end after "to".
         *
         * @param amount the high end
         */
        record UpTo(Amount amount) implements More {}
    }
}
