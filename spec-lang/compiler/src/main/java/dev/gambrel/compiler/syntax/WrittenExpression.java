package dev.gambrel.compiler.syntax;

import dev.gambrel.text.Span;
import java.util.List;

/** Arithmetic as written. */
public sealed interface WrittenExpression {
    /**
     * A figure, such as 2.5 % per mm.
     *
     * @param figure the number with its own unit
     * @param per the units after "per"
     * @param span the place
     */
    record Coefficient(Amount figure, List<Amount.Term> per, Span span) implements WrittenExpression {
        /** Copies the list. */
        public Coefficient {
            per = List.copyOf(per);
        }
    }

    /**
     * A name.
     *
     * @param name the name
     */
    record Named(Name name) implements WrittenExpression {}

    /**
     * Terms added together.
     *
     * @param terms as written
     */
    record Sum(List<WrittenExpression> terms) implements WrittenExpression {
        /** Copies the list. */
        public Sum {
            terms = List.copyOf(terms);
        }
    }

    /**
     * Factors multiplied together.
     *
     * @param factors as written
     */
    record Product(List<WrittenExpression> factors) implements WrittenExpression {
        /** Copies the list. */
        public Product {
            factors = List.copyOf(factors);
        }
    }

    /**
     * A term after a minus.
     *
     * @param of the term
     */
    record Negative(WrittenExpression of) implements WrittenExpression {}

    /**
     * A factor after a division sign.
     *
     * @param of the factor
     */
    record Inverse(WrittenExpression of) implements WrittenExpression {}
}
