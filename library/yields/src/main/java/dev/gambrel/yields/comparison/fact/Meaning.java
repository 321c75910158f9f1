package dev.gambrel.yields.comparison.fact;

import dev.gambrel.tree.portion.Limit;
import java.util.List;
import java.util.Set;

/** What a statement means, whatever its writing: two statements mean the same when their meanings are equal. */
public sealed interface Meaning {
    /**
     * What another may rely on.
     *
     * @param value what is undertaken
     * @param manner how the bench does it, which nobody else relies on
     */
    record ReliedOn(List<String> value, List<String> manner) implements Meaning {
        /** Copies the lists. */
        public ReliedOn {
            value = List.copyOf(value);
            manner = List.copyOf(manner);
        }
    }

    /**
     * A limit of a quantity.
     *
     * @param of what is limited, where there is more than one: "chemical"; limits of different things cannot be compared
     * @param least the low end in the unit of comparison; empty where there is none
     * @param most the high end in the same way
     * @param limit the same limit as written
     */
    record Bounded(String of, String least, String most, Limit limit) implements Meaning {
        /**
         * A limit.
         *
         * @param of what is limited, where there is more than one
         * @param limit the limit
         */
        public Bounded(String of, Limit limit) {
            this(
                    of,
                    limit.least().map(Exact::of).orElse(""),
                    limit.most().map(Exact::of).orElse(""),
                    limit);
        }

        @Override
        public boolean equals(Object other) {
            return other instanceof Bounded that
                    && of.equals(that.of)
                    && least.equals(that.least)
                    && most.equals(that.most);
        }

        @Override
        public int hashCode() {
            return 31 * (31 * of.hashCode() + least.hashCode()) + most.hashCode();
        }
    }

    /**
     * How many pieces may lie outside a limit. It comes and goes with that limit, and then is no change of its own.
     *
     * @param share the most of them, per cent
     */
    record Outside(Bounded share) implements Meaning {}

    /**
     * A limit to some names.
     *
     * @param names those that are accepted
     */
    record OneOf(Set<String> names) implements Meaning {
        /** Copies the names. */
        public OneOf {
            names = Set.copyOf(names);
        }
    }

    /**
     * What weights come from: a share, a loss, a home.
     *
     * @param kind what is told; of different kinds nothing is left of the earlier one
     * @param value the figure
     */
    record Figure(String kind, List<String> value) implements Meaning {
        /** Copies the list. */
        public Figure {
            value = List.copyOf(value);
        }
    }

    /**
     * Where something goes.
     *
     * @param stream the key of the stream; empty for what is sold under its own name
     */
    record Route(String stream) implements Meaning {}

    /**
     * How the bench goes about it, with the same meat in the end.
     *
     * @param value what is told
     */
    record Work(List<String> value) implements Meaning {
        /** Copies the list. */
        public Work {
            value = List.copyOf(value);
        }
    }

    /**
     * Words that no rule and no figure reads.
     *
     * @param words the words
     */
    record Free(String words) implements Meaning {}
}
