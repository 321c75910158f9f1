package dev.gambrel.compiler.revision;

import dev.gambrel.compiler.code.RevisionCode;
import dev.gambrel.compiler.parse.FileReport;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.RevisionClause;
import dev.gambrel.compiler.syntax.Statement;
import dev.gambrel.compiler.syntax.Statement.Declaration;
import java.math.BigInteger;
import java.util.List;
import java.util.Optional;

/** A revision has a number of its own, higher than that of what it revises, and replaces that and no other. */
final class RevisionNumber {
    private RevisionNumber() {}

    static void check(List<Statement> before, Declaration revises, List<Statement> changes, FileReport report) {
        Optional<Clause.Numbers> earlier = line(before).flatMap(RevisionNumber::number);
        if (earlier.isEmpty()) {
            return;
        }
        Optional<Declaration> line = line(changes);
        Optional<Clause.Numbers> own = line.flatMap(RevisionNumber::number);
        if (line.isEmpty() || own.isPresent() && !isHigher(own.get(), earlier.get())) {
            report.add(report.finding(
                            RevisionCode.REVISION_NUMBER, own.map(Clause::span).orElse(revises.keywordSpan()))
                    .with("before", earlier.get().first())
                    .with("found", own.map(Clause.Numbers::first).orElse("not said"))
                    .related(report.at(earlier.get().span()), "what is revised")
                    .help("Write a specification line with the next number."));
        }
        line.ifPresent(written -> checkReplaced(written, earlier.get(), report));
    }

    private static void checkReplaced(Declaration line, Clause.Numbers earlier, FileReport report) {
        for (Clause clause : line.clauses()) {
            if (clause instanceof RevisionClause.Replaces replaces && !same(replaces.number(), earlier.first())) {
                report.add(report.finding(RevisionCode.REPLACES_ANOTHER, replaces.span())
                        .with("found", replaces.number())
                        .with("before", earlier.first())
                        .related(report.at(earlier.span()), "what is revised")
                        .help("Correct the number, or the file that is revised."));
            }
        }
    }

    private static boolean isHigher(Clause.Numbers own, Clause.Numbers earlier) {
        return !isWhole(own.first())
                || !isWhole(earlier.first())
                || new BigInteger(own.first()).compareTo(new BigInteger(earlier.first())) > 0;
    }

    private static boolean same(String one, String other) {
        return !isWhole(one) || !isWhole(other) || new BigInteger(one).equals(new BigInteger(other));
    }

    /** What is no whole number is another finding. */
    private static boolean isWhole(String number) {
        return number.length() <= 6 && number.chars().allMatch(c -> c >= '0' && c <= '9');
    }

    private static Optional<Declaration> line(List<Statement> lines) {
        return lines.stream()
                .filter(statement -> statement instanceof Declaration)
                .map(Declaration.class::cast)
                .filter(line -> line.keyword().isTitle())
                .findFirst();
    }

    private static Optional<Clause.Numbers> number(Declaration line) {
        return line.clauses().stream()
                .filter(clause -> clause instanceof Clause.Numbers)
                .map(Clause.Numbers.class::cast)
                .findFirst();
    }
}
