package dev.gambrel.compiler.syntax;

import dev.gambrel.text.Span;
import dev.gambrel.text.TradeName;
import java.util.List;

/** A line, with what its braces hold. */
public sealed interface Statement {
    /**
     * All of it, braces included.
     *
     * @return the place
     */
    Span span();

    /**
     * A line that starts with a keyword.
     *
     * @param keyword the keyword
     * @param keywordSpan where it is
     * @param names the name or names that it declares or lists
     * @param clauses what else it says, in the order written
     * @param body what its braces hold
     * @param damaged whether some of the line could not be read, so that nothing may be concluded from what is missing
     * @param span all of it
     */
    record Declaration(
            Keyword keyword,
            Span keywordSpan,
            List<Name> names,
            List<Clause> clauses,
            List<Statement> body,
            boolean damaged,
            Span span)
            implements Statement {
        /** Copies the lists. */
        public Declaration {
            names = List.copyOf(names);
            clauses = List.copyOf(clauses);
            body = List.copyOf(body);
        }

        /**
         * The name that it declares, or its keyword where it declares none.
         *
         * @return the first name
         */
        public TradeName name() {
            return names.isEmpty() ? TradeName.of(keyword.word()) : names.get(0).text();
        }

        /**
         * What to underline for the line as a whole: its name, or else its keyword.
         *
         * @return the place
         */
        public Span head() {
            return names.isEmpty() ? keywordSpan : names.get(0).span();
        }
    }

    /**
     * A line that starts with no keyword; it has been reported.
     *
     * @param body what its braces hold
     * @param span all of it
     */
    record Unknown(List<Statement> body, Span span) implements Statement {
        /** Copies the list. */
        public Unknown {
            body = List.copyOf(body);
        }
    }
}
