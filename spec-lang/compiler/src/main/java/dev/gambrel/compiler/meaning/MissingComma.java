package dev.gambrel.compiler.meaning;

import dev.gambrel.compiler.code.MeaningCode;
import dev.gambrel.compiler.parse.FileReport;
import dev.gambrel.compiler.syntax.Keyword;
import dev.gambrel.compiler.syntax.Name;
import dev.gambrel.compiler.syntax.Statement.Declaration;
import dev.gambrel.text.Span;
import dev.gambrel.text.TradeName;
import java.util.List;
import java.util.Optional;

/**
 * A comma that was left out makes a clause part of the name before it: "leg boneless" would be a cut of that name, of which
 * nothing is known and nothing checked. A name in quotation marks is meant as it stands.
 */
public final class MissingComma {
    private static final List<String> OF_CUTS = List.of(
            "two per carcass",
            "one per carcass",
            "bone in",
            "part boned",
            "boneless",
            "pair matched",
            "two people",
            "planed",
            "practically free");
    private static final List<String> OF_WAYS = List.of("as a rule");
    private static final List<String> OF_PORTIONS = List.of("whole", "halved", "weight rules", "thickness rules");

    private MissingComma() {}

    /** Reports a clause at the end of a line's name; true if there is one. */
    public static boolean isReported(Located located) {
        Declaration line = located.line();
        if (line.names().isEmpty()) {
            return false;
        }
        Name name = line.names().get(0);
        Optional<String> clause = clauseAtTheEnd(line.keyword(), name.text());
        boolean quoted = located.report().slice(name.span()).startsWith("\"");
        if (clause.isEmpty() || quoted || isSaidBesides(clause.get(), located)) {
            return false;
        }
        report(name, clause.get(), located.report());
        return true;
    }

    private static Optional<String> clauseAtTheEnd(Keyword keyword, TradeName name) {
        List<String> clauses =
                switch (keyword) {
                    case CUT_LINE, TRIM_LINE -> OF_CUTS;
                    case WORKED_LINE -> OF_WAYS;
                    case PORTION_LINE -> OF_PORTIONS;
                    default -> List.of();
                };
        return clauses.stream()
                .filter(clause -> name.key().endsWith(" " + clause))
                .findFirst();
    }

    /** Where the line says it once more behind a comma, the name is meant as it stands. */
    private static boolean isSaidBesides(String clause, Located located) {
        return located.line().clauses().stream()
                .map(said -> located.report().slice(said.span()))
                .anyMatch(clause::equalsIgnoreCase);
    }

    private static void report(Name name, String clause, FileReport report) {
        String text = name.text().text();
        String before = text.substring(0, text.length() - clause.length()).strip();
        Span end = new Span(name.span().end() - clause.length(), name.span().end());
        report.add(report.finding(MeaningCode.MISSING_COMMA, end)
                .with("clause", clause)
                .with("name", before)
                .help("Put a comma before it: " + before + ", " + clause)
                .help("Or put the whole name in quotation marks, if that is what it is called: \"" + text + "\""));
    }
}
