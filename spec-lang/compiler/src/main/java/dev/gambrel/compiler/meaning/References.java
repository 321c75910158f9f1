package dev.gambrel.compiler.meaning;

import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.anatomy.Reference;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Numbers in published schemes. */
public final class References {
    private static final String RANGE = "range ";

    private References() {}

    /** The number of a reference line; nothing, after a finding, if it cannot be read. */
    public static Optional<Reference> read(Located located) {
        Clauses clauses = new Clauses(located);
        Optional<Clause.Item> item = clauses.one(Clause.Item.class, "a number");
        String but = clauses.one(Clause.But.class, "in what it differs")
                .map(Clause.But::words)
                .orElse("");
        List<TradeName> sources = Citations.take(clauses);
        String range = clauses.one(Clause.Words.class, "its weight range", words -> startsWith(words, RANGE))
                .map(words -> words.words().substring(RANGE.length()).strip())
                .orElse("");
        Reference.Rules rules = clauses.one(
                        Clause.Words.class, "what holds", words -> rules(words) != Reference.Rules.NOT_STATED)
                .map(References::rules)
                .orElse(Reference.Rules.NOT_STATED);
        clauses.finish();
        return item.filter(i -> !located.line().names().isEmpty())
                .map(i -> new Reference(
                        located.line().names().get(0).text(), i.number(), i.edition(), but, range, rules, sources));
    }

    private static boolean startsWith(Clause.Words words, String beginning) {
        return words.words().toLowerCase(Locale.ROOT).startsWith(beginning);
    }

    private static Reference.Rules rules(Clause.Words words) {
        for (Reference.Rules rules : Reference.Rules.values()) {
            if (words.words().equalsIgnoreCase(rules.words())) {
                return rules;
            }
        }
        return Reference.Rules.NOT_STATED;
    }
}
