package dev.gambrel.compiler.syntax;

import dev.gambrel.text.Span;
import java.util.List;

/** Something that a line about supply says. */
public sealed interface TermClause extends Clause.OfOneKindOfLine {
    /**
     * A limit, and what stands after it.
     *
     * @param kind which ends it has
     * @param amounts one, or both ends of a range
     * @param end what stands after it
     * @param span the place
     */
    record Limited(Kind kind, List<Amount> amounts, End end, Span span) implements TermClause {
        /** Copies the list. */
        public Limited {
            amounts = List.copyOf(amounts);
        }
    }

    /** Which ends a limit has. */
    enum Kind {
        /** From one figure to another. */
        BETWEEN,
        /** Nothing less. */
        AT_LEAST,
        /** Nothing more. */
        AT_MOST,
        /** Neither more nor less. */
        EXACTLY
    }

    /**
     * What stands after a limit.
     *
     * @param word such as "visual", "from" or "at"; empty where nothing does
     * @param names what is named after the word
     */
    record End(String word, List<Name> names) {
        /** Nothing. */
        public static final End NONE = new End("", List.of());

        /** Copies the list. */
        public End {
            names = List.copyOf(names);
        }

        /**
         * Whether a word stands there.
         *
         * @param wanted the word
         * @return true if it does
         */
        public boolean is(String wanted) {
            return word.equals(wanted);
        }
    }

    /**
     * How many may be outside: "1 in 20".
     *
     * @param written the two numbers
     * @param span the place
     */
    record Outside(Amount written, Span span) implements TermClause {}

    /**
     * What it is packed in, however many together.
     *
     * @param container what
     * @param span the place
     */
    record PackedIn(Name container, Span span) implements TermClause {}
}
