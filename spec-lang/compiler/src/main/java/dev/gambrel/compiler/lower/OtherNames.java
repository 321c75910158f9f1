package dev.gambrel.compiler.lower;

import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.tree.OtherName;
import java.util.List;

/** Names elsewhere. */
final class OtherNames {
    private OtherNames() {}

    static List<OtherName> take(Clauses clauses) {
        return clauses.all(Clause.Also.class).stream()
                .map(also -> new OtherName(also.name().text(), also.regions()))
                .toList();
    }
}
