package dev.gambrel.compiler.lower;

import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.text.TradeName;
import java.util.ArrayList;
import java.util.List;

/** What figures rest on. */
final class Citations {
    private Citations() {}

    static List<TradeName> take(Clauses clauses) {
        List<TradeName> sources = new ArrayList<>(1);
        clauses.all(Clause.Cites.class)
                .forEach(cites -> sources.add(cites.name().text()));
        return sources;
    }
}
