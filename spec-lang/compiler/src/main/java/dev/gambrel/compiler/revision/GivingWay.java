package dev.gambrel.compiler.revision;

import dev.gambrel.compiler.code.RevisionCode;
import dev.gambrel.compiler.parse.FileReport;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.EstimateClause;
import dev.gambrel.compiler.syntax.RevisionClause;
import dev.gambrel.compiler.syntax.Statement.Declaration;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.NearestName;
import dev.gambrel.text.Span;
import dev.gambrel.text.TradeName;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * Who gives way where shares change. What one part gains another loses: the part that the changed line names, or the rest.
 * Lines that name none must make it up among themselves. What an estimate gives is known only of a carcass, so only the rest
 * can make up for it, and does so by itself.
 */
final class GivingWay {
    private static final TradeName REST = TradeName.of("rest");

    private record Change(TradeName part, BigDecimal by, List<RevisionClause.Difference> from, Span where) {}

    private final TreePath path;
    private final FileReport report;
    private final Map<Span, Span> earlier;
    private final List<Change> changes = new ArrayList<>();
    private final List<RevisionClause.Difference> ofEstimates = new ArrayList<>();
    private boolean fails;

    GivingWay(TreePath path, FileReport report, Map<Span, Span> earlier) {
        this.path = path;
        this.report = report;
        this.earlier = earlier;
    }

    private TradeName whole() {
        return TradeName.of(path.last());
    }

    /** A part's line before and after: one of the two is missing where the part is new or left out. */
    void note(List<Declaration> before, List<Declaration> after, Declaration written) {
        List<RevisionClause.Difference> from = written.clauses().stream()
                .filter(clause -> clause instanceof RevisionClause.Difference)
                .map(RevisionClause.Difference.class::cast)
                .toList();
        if (isEstimated(before) || isEstimated(after)) {
            ofEstimates.addAll(from);
            return;
        }
        BigDecimal by = mean(after).subtract(mean(before));
        if (by.signum() != 0 || !from.isEmpty()) {
            changes.add(new Change(LineKey.name(written), by, from, where(written)));
        }
    }

    private static boolean isEstimated(List<Declaration> lines) {
        return lines.stream()
                .flatMap(line -> line.clauses().stream())
                .anyMatch(clause -> clause instanceof EstimateClause.EstimatedBy);
    }

    private BigDecimal mean(List<Declaration> lines) {
        return lines.stream()
                .flatMap(line -> WrittenShare.of(line, whole()).stream())
                .flatMap(share -> WrittenShare.mean(share).stream())
                .findFirst()
                .orElse(BigDecimal.ZERO);
    }

    private Span where(Declaration line) {
        return WrittenShare.of(line, whole()).map(Clause::span).orElse(line.head());
    }

    /** Takes every difference from whom it is to be taken; false, after a finding, where that cannot be done. */
    boolean settle(Lines lines) {
        ofEstimates.stream().filter(from -> !from.part().text().equals(REST)).forEach(this::onlyTheRest);
        BigDecimal open = BigDecimal.ZERO;
        for (Change change : changes) {
            if (change.from().isEmpty()) {
                open = open.add(change.by());
            } else {
                take(change.by(), change.from().get(0), lines);
            }
        }
        if (open.signum() != 0 && lines.isDivided()) {
            changes.stream().filter(change -> change.from().isEmpty()).forEach(this::nothingGivesWay);
        }
        return !fails;
    }

    private void nothingGivesWay(Change change) {
        fails = true;
        report.add(report.finding(RevisionCode.NOTHING_GIVES_WAY, change.where())
                .with("part", change.part())
                .with("by", points(change.by()))
                .with("whole", path.last())
                .with("more", change.by().signum() > 0 ? "more" : "less")
                .help("Say at the end of the line where it "
                        + (change.by().signum() > 0
                                ? "comes from: difference from rest, or difference from another part."
                                : "goes to: difference to rest, or difference to another part."))
                .help("Or change the shares of several lines so that they make it up among themselves."));
    }

    private static String points(BigDecimal by) {
        return by.abs().stripTrailingZeros().toPlainString();
    }

    private void take(BigDecimal by, RevisionClause.Difference from, Lines lines) {
        TradeName name = from.part().text();
        boolean left =
                lines.isDivided() ? lines.hasRest() && name.equals(REST) : name.equals(REST) || name.equals(whole());
        if (left) {
            return;
        }
        Optional<Integer> at = lines.part(name, whole());
        if (at.isEmpty()) {
            cannot(from, lines.called(name).isEmpty() ? path.last() + " has no such part" : "it has no share", lines);
            return;
        }
        Declaration line = lines.get(at.get());
        Clause.Figures share = WrittenShare.of(line, whole()).orElseThrow();
        Optional<BigDecimal> mean = WrittenShare.mean(share);
        if (mean.isPresent() && mean.get().compareTo(by) < 0) {
            cannot(from, "it is " + mean.get().toPlainString() + " %, and " + points(by) + " % is wanted", lines);
        } else if (mean.isPresent()) {
            Clause.Figures less = WrittenShare.lessened(share, by, from.span());
            earlier.putIfAbsent(less.span(), share.span());
            lines.put(at.get(), with(line, share, less));
        }
    }

    private void onlyTheRest(RevisionClause.Difference from) {
        report.add(cannot(from, "what an estimate gives is known only of a carcass")
                .help("Leave out the difference: the rest makes up for what is estimated."));
    }

    private void cannot(RevisionClause.Difference from, String why, Lines lines) {
        Diagnostic finding = cannot(from, why);
        report.add(NearestName.of(from.part().text(), lines.names())
                .filter(near -> !near.equals(from.part().text()))
                .map(near -> report.didYouMean(finding, from.part().span(), near))
                .orElse(finding.help(
                        "Name a part of " + path.last() + " that has a share, or its rest if it has one.")));
    }

    private Diagnostic cannot(RevisionClause.Difference from, String why) {
        fails = true;
        return report.finding(RevisionCode.CANNOT_GIVE_WAY, from.part().span())
                .with("part", from.part().text())
                .with("why", why);
    }

    private static Declaration with(Declaration line, Clause before, Clause after) {
        List<Clause> clauses = new ArrayList<>(line.clauses());
        clauses.set(clauses.indexOf(before), after);
        return new Declaration(
                line.keyword(), line.keywordSpan(), line.names(), clauses, line.body(), line.damaged(), line.span());
    }
}
