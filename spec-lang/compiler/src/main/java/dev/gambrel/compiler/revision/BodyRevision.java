package dev.gambrel.compiler.revision;

import dev.gambrel.compiler.code.RevisionCode;
import dev.gambrel.compiler.parse.FileReport;
import dev.gambrel.compiler.syntax.Keyword;
import dev.gambrel.compiler.syntax.Name;
import dev.gambrel.compiler.syntax.Statement;
import dev.gambrel.compiler.syntax.Statement.Declaration;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.NearestName;
import dev.gambrel.text.Span;
import dev.gambrel.text.TradeName;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.SortedSet;
import java.util.function.Consumer;

/** Lays the lines of one pair of braces over those of another: changes only what they name, adds and leaves out. */
final class BodyRevision {
    private final FileReport report;
    private final Map<Span, Span> earlier;
    private final Consumer<TreePath> unsure;

    /** One that notes for each changed clause where the earlier one stood, and the cuts of which nothing more may be said. */
    BodyRevision(FileReport report, Map<Span, Span> earlier, Consumer<TreePath> unsure) {
        this.report = report;
        this.earlier = earlier;
        this.unsure = unsure;
    }

    List<Statement> revise(List<Statement> before, List<Statement> changes, TreePath path) {
        Lines lines = new Lines(before);
        GivingWay shares = new GivingWay(path, report, earlier);
        boolean clear = true;
        for (Declaration line : lines(changes, Turn.OMITTED)) {
            clear &= omit(line, lines, shares);
        }
        for (Declaration line : lines(changes, Turn.CHANGED)) {
            clear &= change(line, lines, shares, path);
        }
        for (Declaration line : lines(changes, Turn.ADDED)) {
            add(line, lines, shares);
        }
        changes.stream().filter(change -> change instanceof Statement.Unknown).forEach(lines::add);
        if (!shares.settle(lines) || !clear) {
            unsure.accept(path);
        }
        return lines.list();
    }

    /** What is left out goes first and what is added comes last, so that the order of the lines makes no difference. */
    private enum Turn {
        OMITTED,
        CHANGED,
        ADDED
    }

    private static List<Declaration> lines(List<Statement> changes, Turn turn) {
        return changes.stream()
                .filter(change -> change instanceof Declaration)
                .map(Declaration.class::cast)
                .filter(line -> turn(line) == turn)
                .toList();
    }

    private static Turn turn(Declaration line) {
        return switch (line.keyword()) {
            case OMIT_LINE -> Turn.OMITTED;
            case ADD_LINE -> Turn.ADDED;
            default -> Turn.CHANGED;
        };
    }

    private static void add(Declaration add, Lines lines, GivingWay shares) {
        for (Statement statement : add.body()) {
            if (statement instanceof Declaration line) {
                shares.note(List.of(), List.of(line), line);
                lines.add(withoutDifference(line));
            } else {
                lines.add(statement);
            }
        }
    }

    private boolean omit(Declaration omit, Lines lines, GivingWay shares) {
        TradeName name = LineKey.name(omit);
        List<Integer> found = List.copyOf(lines.called(name));
        if (found.isEmpty()) {
            nothingSuch(name.text(), omit, lines);
            return false;
        }
        for (int at : found) {
            shares.note(List.of(lines.get(at)), List.of(), omit);
            lines.remove(at);
        }
        return true;
    }

    private boolean change(Declaration change, Lines lines, GivingWay shares, TreePath path) {
        LineKey key = LineKey.of(change);
        SortedSet<Integer> found = lines.find(key);
        if (found.size() != 1) {
            if (found.isEmpty()) {
                nothingSuch(key.words(), change, lines);
            } else {
                report.add(
                        report.finding(RevisionCode.SEVERAL_TO_CHANGE, change.head())
                                .with("count", found.size())
                                .with("line", change.keyword().word())
                                .help(
                                        "Leave them out with omit, and write in the braces of an add line those that there should be."));
            }
            return false;
        }
        Declaration before = lines.get(found.first());
        Declaration after = merged(before, change, path);
        shares.note(List.of(before), List.of(after), change);
        lines.put(found.first(), after);
        return true;
    }

    private void nothingSuch(String wanted, Declaration line, Lines lines) {
        Diagnostic finding =
                report.finding(RevisionCode.NOTHING_TO_CHANGE, line.head()).with("line", wanted);
        TradeName name = LineKey.name(line);
        Optional<Declaration> holder = lines.holderOf(LineKey.of(line));
        if (holder.isPresent()) {
            String braces = holder.get().keyword().word() + " " + LineKey.name(holder.get());
            report.add(finding.related(report.at(holder.get().head()), "there is one in the braces of this line")
                    .help("Write it in the braces of “" + braces + "”, as it stands there."));
            return;
        }
        SortedSet<Integer> same = lines.called(name);
        if (!same.isEmpty()) {
            Declaration other = lines.get(same.first());
            report.add(finding.related(
                            report.at(other.head()),
                            "here it is a " + other.keyword().word() + " line")
                    .help("Begin the line with the word that it begins with there."));
            return;
        }
        Diagnostic nearest = NearestName.of(name, lines.names())
                .map(near -> report.didYouMean(finding, line.head(), near))
                .orElse(finding);
        report.add(nearest.help(
                line.keyword() == Keyword.OMIT_LINE
                        ? "Take the omit line out where there is nothing to leave out."
                        : "A line that is new stands in the braces of an add line."));
    }

    /** The number, title and date of a revision are its own; every other line keeps what the revision does not name. */
    private Declaration merged(Declaration before, Declaration change, TreePath path) {
        if (change.keyword().isTitle()) {
            return change;
        }
        boolean lists =
                switch (change.keyword()) {
                    case CONTAINS_LINE, GRADE_LINE, CLAIM_LINE, LABEL_LINE -> true;
                    default -> false;
                };
        List<Name> names = lists ? change.names() : before.names();
        List<Statement> body = change.body().isEmpty()
                ? before.body()
                : revise(before.body(), change.body(), path.then(LineKey.name(before)));
        return new Declaration(
                before.keyword(),
                before.keywordSpan(),
                names,
                new ClauseSlots(TradeName.of(path.last()), earlier).merge(before.clauses(), change.clauses()),
                body,
                before.damaged() || change.damaged(),
                before.span());
    }

    private static Declaration withoutDifference(Declaration line) {
        return new Declaration(
                line.keyword(),
                line.keywordSpan(),
                line.names(),
                ClauseSlots.withoutDifference(line.clauses()),
                line.body(),
                line.damaged(),
                line.span());
    }
}
