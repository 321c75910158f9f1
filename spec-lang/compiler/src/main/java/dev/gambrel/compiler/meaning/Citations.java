package dev.gambrel.compiler.meaning;

import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.text.TradeName;
import java.util.List;

/** What figures rest on. */
public final class Citations {
    private Citations() {}

    /** Takes the sources that a line cites. */
    public static List<TradeName> take(Clauses clauses) {
        return clauses.all(Clause.Cites.class).stream()
                .map(cites -> cites.name().text())
                .toList();
    }
}
