package dev.gambrel.compiler.syntax;

import dev.gambrel.text.Span;
import java.math.BigDecimal;
import java.util.List;

/**
 * A number with its unit, or two of them: "47 lb 6 oz".
 *
 * @param terms one or two
 * @param span all of it
 */
public record Amount(List<Term> terms, Span span) {
    /** Copies the list. */
    public Amount {
        terms = List.copyOf(terms);
    }

    /**
     * One number with its unit.
     *
     * @param number the number, exact
     * @param unit the unit as written, empty where there is none
     * @param span both
     */
    public record Term(BigDecimal number, String unit, Span span) {}
}
