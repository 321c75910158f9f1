package dev.gambrel.compiler.lower;

import dev.gambrel.compiler.code.MeaningCode;
import dev.gambrel.compiler.meaning.Clauses;
import dev.gambrel.compiler.meaning.FigureReader;
import dev.gambrel.compiler.parse.FileReport;
import dev.gambrel.compiler.syntax.Amount;
import dev.gambrel.compiler.syntax.TermClause;
import dev.gambrel.tree.portion.Outside;
import java.util.List;
import java.util.Optional;

/** "At most 1 in 20 outside". The word "in" is read as a unit first, since the same word is one. */
final class OutsideReader {
    private static final int MOST = 999_999;

    private OutsideReader() {}

    static Outside take(Clauses clauses, FileReport report) {
        return clauses.one(TermClause.Outside.class, "how many may be outside")
                .flatMap(said -> read(said, report))
                .orElse(new Outside.None());
    }

    private static Optional<Outside> read(TermClause.Outside said, FileReport report) {
        List<Amount.Term> terms = said.written().terms();
        boolean readable = terms.size() == 2
                && terms.get(0).unit().equalsIgnoreCase("in")
                && terms.get(1).unit().isEmpty();
        if (!readable) {
            return unreadable(said, report);
        }
        FigureReader figures = new FigureReader(report);
        Optional<Integer> most = number(figures, terms.get(0));
        Optional<Integer> of = number(figures, terms.get(1));
        if (most.isPresent() && of.isPresent() && of.get() <= most.get()) {
            return unreadable(said, report);
        }
        return most.flatMap(number -> of.map(whole -> new Outside.OutOf(number, whole)));
    }

    private static Optional<Outside> unreadable(TermClause.Outside said, FileReport report) {
        report.add(report.finding(MeaningCode.NOT_SO_MANY_OUTSIDE, said.span())
                .with("found", report.slice(said.written().span()))
                .help("Write how many out of how many: at most 1 in 20 outside"));
        return Optional.empty();
    }

    private static Optional<Integer> number(FigureReader figures, Amount.Term term) {
        return figures.count(term.number().toPlainString(), term.span(), 1, MOST);
    }
}
