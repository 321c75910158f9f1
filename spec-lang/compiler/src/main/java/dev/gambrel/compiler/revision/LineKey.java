package dev.gambrel.compiler.revision;

import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.Keyword;
import dev.gambrel.compiler.syntax.Statement.Declaration;
import dev.gambrel.text.TradeName;
import java.util.Locale;
import java.util.Set;

/**
 * By what a line of a revision finds the line that it changes: its keyword with its name or, of a line that has none,
 * with what tells it from its like.
 *
 * @param keyword the keyword
 * @param which the folded name, bases or region; empty for a line of which there is one
 */
record LineKey(Keyword keyword, String which) {
    private static final Set<Keyword> LISTS = Set.of(Keyword.CONTAINS_LINE, Keyword.CLAIM_LINE, Keyword.LABEL_LINE);

    static LineKey of(Declaration line) {
        boolean named = !line.names().isEmpty() && !LISTS.contains(line.keyword());
        return new LineKey(line.keyword(), named ? name(line).key() : otherwise(line));
    }

    private static String otherwise(Declaration line) {
        StringBuilder which = new StringBuilder();
        for (Clause clause : line.clauses()) {
            if (clause instanceof Clause.Basis basis) {
                which.append(line.keyword() == Keyword.FROM_LINE ? basis.words() + " " : "");
            } else if (clause instanceof Clause.Region region) {
                which.append(region.word());
            }
        }
        return which.toString().toLowerCase(Locale.ROOT);
    }

    /** The name that a line declares; of a line without one its keyword. */
    static TradeName name(Declaration line) {
        return line.names().isEmpty()
                ? TradeName.of(line.keyword().word())
                : line.names().get(0).text();
    }

    /** "cut topside", or "carcass line". */
    String words() {
        return which.isEmpty() ? keyword.word() + " line" : keyword.word() + " " + which;
    }
}
