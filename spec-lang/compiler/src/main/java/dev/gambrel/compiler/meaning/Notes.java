package dev.gambrel.compiler.meaning;

import dev.gambrel.compiler.syntax.Clause;
import java.util.Optional;

/** Free words. */
public final class Notes {
    private Notes() {}

    /** The words of a note line. */
    public static Optional<String> read(Located located) {
        return new Clauses(located).one(Clause.Text.class, "its words").map(Clause.Text::text);
    }
}
