package dev.gambrel.compiler.lower;

import dev.gambrel.compiler.syntax.Clause;
import java.util.Optional;

/** Free words. */
final class Notes {
    private Notes() {}

    static Optional<String> read(Located located) {
        return new Clauses(located).one(Clause.Text.class, "its words").map(Clause.Text::text);
    }
}
