package dev.gambrel.compiler.syntax;

import dev.gambrel.tree.choice.Bound;
import java.util.List;

/** When a cut is worked in a way, as written. */
public sealed interface WrittenChoice {
    /** As a rule. */
    record AsARule() implements WrittenChoice {}

    /**
     * When something has some weight.
     *
     * @param subject what is weighed, as written
     * @param limits one limit, or two that both hold
     */
    record Weighs(Name subject, List<Limit> limits) implements WrittenChoice {
        /** Copies the list. */
        public Weighs {
            limits = List.copyOf(limits);
        }
    }

    /**
     * When something is one of some values.
     *
     * @param subject what is asked about, as written
     * @param values the values named; of a range, its two ends
     * @param isRange whether "to" stands between them
     */
    record Is(Name subject, List<Name> values, boolean isRange) implements WrittenChoice {
        /** Copies the list. */
        public Is {
            values = List.copyOf(values);
        }
    }

    /**
     * A limit on a weight.
     *
     * @param kind on which side
     * @param weight the figure
     */
    record Limit(Bound.Kind kind, Amount weight) {}
}
