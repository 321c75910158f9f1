package dev.gambrel.tree.estimate;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import java.util.List;

/**
 * Arithmetic with exact decimals. Figures carry their units, so that what does not measure the same is never added.
 */
public sealed interface Expression {
    /**
     * A figure, such as 0.83659 % per mm.
     *
     * @param figure the figure; a plain number where it has no unit of its own
     * @param per the units after "per"
     */
    record Coefficient(Quantity figure, List<Unit> per) implements Expression {
        /** Copies the list. */
        public Coefficient {
            per = List.copyOf(per);
        }

        @Override
        public String toString() {
            StringBuilder out = new StringBuilder(figure.toString());
            per.forEach(unit -> out.append(" per ").append(unit.symbol()));
            return out.toString();
        }
    }

    /**
     * What a measure, another equation or a carcass weight comes to.
     *
     * @param name its name
     */
    record Named(TradeName name) implements Expression {
        @Override
        public String toString() {
            return name.text();
        }
    }

    /**
     * Terms added together.
     *
     * @param terms in the order written
     */
    record Sum(List<Expression> terms) implements Expression {
        /**
         * Copies the list.
         *
         * @throws IllegalArgumentException if there is no term
         */
        public Sum {
            terms = List.copyOf(terms);
            if (terms.isEmpty()) {
                throw new IllegalArgumentException("a sum of nothing");
            }
        }
    }

    /**
     * Factors multiplied together.
     *
     * @param factors in the order written
     */
    record Product(List<Expression> factors) implements Expression {
        /**
         * Copies the list.
         *
         * @throws IllegalArgumentException if there is no factor
         */
        public Product {
            factors = List.copyOf(factors);
            if (factors.isEmpty()) {
                throw new IllegalArgumentException("a product of nothing");
            }
        }
    }

    /**
     * A term that is taken away.
     *
     * @param of what is taken away
     */
    record Negative(Expression of) implements Expression {}

    /**
     * A factor that is divided by.
     *
     * @param of what is divided by
     */
    record Inverse(Expression of) implements Expression {}
}
