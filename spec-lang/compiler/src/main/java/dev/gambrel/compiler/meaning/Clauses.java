package dev.gambrel.compiler.meaning;

import dev.gambrel.compiler.code.MeaningCode;
import dev.gambrel.compiler.parse.FileReport;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.Statement.Declaration;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.text.NearestName;
import dev.gambrel.text.Span;
import dev.gambrel.text.TradeName;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.Stream;

/** The clauses of one line, taken out one kind after another; what nobody takes does not belong there. */
public final class Clauses {
    private static final List<TradeName> PHRASES = Stream.of(
                    "two per carcass",
                    "one per carcass",
                    "bone in",
                    "boneless",
                    "part boned",
                    "as a rule",
                    "saleable",
                    "by-product",
                    "waste",
                    "published",
                    "measured",
                    "judgement",
                    "common practice",
                    "decimals dropped",
                    "chilled",
                    "frozen",
                    "words rule",
                    "number rules",
                    "memory")
            .map(TradeName::of)
            .toList();

    private final Declaration line;
    private final FileReport report;
    private final List<Clause> left;

    /** The clauses of a line, none taken yet. */
    public Clauses(Located located) {
        this.line = located.line();
        this.report = located.report();
        this.left = new ArrayList<>(line.clauses());
    }

    /** Takes all of a kind, in the order written. */
    public <C extends Clause> List<C> all(Class<C> kind) {
        return all(kind, clause -> true);
    }

    /** Takes all of a kind that pass, in the order written. */
    public <C extends Clause> List<C> all(Class<C> kind, Predicate<C> which) {
        List<C> taken = new ArrayList<>(2);
        for (int i = 0; i < left.size(); i++) {
            Clause clause = left.get(i);
            if (kind.isInstance(clause) && which.test(kind.cast(clause))) {
                taken.add(kind.cast(clause));
                left.remove(i--);
            }
        }
        return taken;
    }

    /** Takes the only one of a kind, and reports a second. */
    public <C extends Clause> Optional<C> one(Class<C> kind, String what) {
        return one(kind, what, clause -> true);
    }

    /** Takes the only one of a kind that passes, and reports a second. */
    public <C extends Clause> Optional<C> one(Class<C> kind, String what, Predicate<C> which) {
        List<C> taken = all(kind, which);
        if (taken.size() > 1) {
            report.add(report.finding(MeaningCode.SAID_TWICE, taken.get(1).span())
                    .with("line", line.keyword().word())
                    .with("what", what)
                    .related(report.at(taken.get(0).span()), "said here first")
                    .help("Keep one of the two."));
        }
        return taken.isEmpty() ? Optional.empty() : Optional.of(taken.get(0));
    }

    /** Takes the only one of a kind, and reports if there is none, unless it may be among words not understood. */
    public <C extends Clause> Optional<C> required(Class<C> kind, String what, String help) {
        Optional<C> taken = one(kind, what);
        if (taken.isEmpty() && !line.damaged() && !hasStrayWords()) {
            report.add(report.finding(MeaningCode.MISSING_CLAUSE, line.head())
                    .with("line", line.keyword().word())
                    .with("what", what)
                    .help(help));
        }
        return taken;
    }

    /** Whether words are left that nobody understood, and that may mean what is missed. */
    public boolean hasStrayWords() {
        return left.stream().anyMatch(clause -> clause instanceof Clause.Words);
    }

    /** Reports whatever is left. */
    public void finish() {
        for (Clause clause : left) {
            Span span = clause instanceof Clause.Arrow arrow ? arrow.stream().span() : clause.span();
            String written = report.slice(span);
            Diagnostic finding = report.finding(MeaningCode.MISPLACED_CLAUSE, span)
                    .with("clause", written)
                    .with("line", line.keyword().word());
            report.add(NearestName.of(clause instanceof Clause.Words ? written : "", PHRASES)
                    .map(near -> report.didYouMean(finding, span, near))
                    .orElse(finding)
                    .help("Such a line goes: " + line.keyword().form()));
        }
    }
}
