package dev.gambrel.compiler.lower;

import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.text.TradeName;
import java.util.List;

/** What figures rest on. */
final class Citations {
    private Citations() {}

    static List<TradeName> take(Clauses clauses) {
        return clauses.all(Clause.Cites.class).stream()
                .map(cites -> cites.name().text())
                .toList();
    }
}
