package dev.gambrel.compiler.meaning;

import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.anatomy.Reference;
import java.util.List;
import java.util.Optional;

/** Numbers in published schemes. */
public final class References {
    private References() {}

    /** The number of a reference line; nothing, after a finding, if it cannot be read. */
    public static Optional<Reference> read(Located located) {
        Clauses clauses = new Clauses(located);
        Optional<Clause.Item> item = clauses.one(Clause.Item.class, "a number");
        String but = clauses.one(Clause.But.class, "in what it differs")
                .map(Clause.But::words)
                .orElse("");
        List<TradeName> sources = Citations.take(clauses);
        clauses.finish();
        return item.filter(i -> !located.line().names().isEmpty())
                .map(i -> new Reference(located.line().names().get(0).text(), i.number(), i.edition(), but, sources));
    }
}
