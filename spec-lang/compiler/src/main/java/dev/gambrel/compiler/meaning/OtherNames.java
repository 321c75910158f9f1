package dev.gambrel.compiler.meaning;

import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.tree.anatomy.OtherName;
import java.util.List;

/** Names elsewhere. */
public final class OtherNames {
    private OtherNames() {}

    /** Takes what a line says that it is called elsewhere. */
    public static List<OtherName> take(Clauses clauses) {
        return clauses.all(Clause.Also.class).stream()
                .map(also -> new OtherName(also.name().text(), also.regions()))
                .toList();
    }
}
