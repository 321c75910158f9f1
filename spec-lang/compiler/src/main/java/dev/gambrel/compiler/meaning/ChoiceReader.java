package dev.gambrel.compiler.meaning;

import dev.gambrel.compiler.code.ConditionCode;
import dev.gambrel.compiler.parse.FileReport;
import dev.gambrel.compiler.syntax.Amount;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.Figure;
import dev.gambrel.compiler.syntax.Name;
import dev.gambrel.compiler.syntax.WrittenChoice;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.choice.Bound;
import dev.gambrel.tree.choice.Choice;
import dev.gambrel.tree.choice.Condition;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** When a cut is worked in a way: as a rule, in a share of the pieces, when something is so, or only on request. */
public final class ChoiceReader {
    private static final Set<TradeName> PIECE =
            Set.of(TradeName.of("a piece"), TradeName.of("the piece"), TradeName.of("piece"));
    private static final Set<TradeName> CARCASS = Set.of(
            TradeName.of("the carcass"),
            TradeName.of("carcass"),
            TradeName.of("a carcass"),
            TradeName.of("the carcase"),
            TradeName.of("carcase"));
    private static final String ARTICLE = "the ";

    /**
     * A choice, and whether it is only a stand-in.
     *
     * @param choice the choice
     * @param inDoubt true if something was written that could not be read
     */
    public record Read(Choice choice, boolean inDoubt) {}

    private final FileReport report;
    private final FigureReader figures;

    /** A reader that reports to a file. */
    public ChoiceReader(FileReport report) {
        this.report = report;
        this.figures = new FigureReader(report);
    }

    /** Takes what a line says of when, and reports a second choice. */
    public Read take(Clauses clauses) {
        Optional<Clause> said = clauses.one(
                Clause.class,
                "when the cut is worked so",
                clause -> clause instanceof Clause.Chosen || clause instanceof Clause.Figures);
        if (said.isEmpty()) {
            return new Read(new Choice.OnRequest(), false);
        }
        Optional<Choice> choice = said.get() instanceof Clause.Figures share
                ? share(share.figure())
                : chosen(((Clause.Chosen) said.get()).choice());
        return new Read(choice.orElse(new Choice.OnRequest()), choice.isEmpty());
    }

    private Optional<Choice> share(Figure figure) {
        if (!(figure.more() instanceof Figure.More.Nothing) || !figure.of().isEmpty()) {
            report.add(report.finding(ConditionCode.WAY_SHARE_STRAYS, figure.span())
                    .with("found", report.slice(figure.span()))
                    .help("Write one figure: 50 %. How it turns out on a day is for a run to say."));
            return Optional.empty();
        }
        return figures.quantity(figure.amount(), Dimension.SHARE).map(Choice.OfPieces::new);
    }

    private Optional<Choice> chosen(WrittenChoice written) {
        if (written instanceof WrittenChoice.Weighs weighs) {
            return weighs(weighs).map(Choice.When::new);
        } else if (written instanceof WrittenChoice.Is is) {
            return is(is).map(Choice.When::new);
        }
        return Optional.of(new Choice.AsARule());
    }

    private Optional<Condition> weighs(WrittenChoice.Weighs written) {
        TradeName subject = written.subject().text();
        boolean isPiece = PIECE.contains(subject);
        if (!isPiece && !CARCASS.contains(subject)) {
            report.add(report.finding(
                            ConditionCode.WEIGHT_OF_WHAT, written.subject().span())
                    .with("subject", subject)
                    .help("Write what is weighed: when a piece is under 1.0 kg, or when the carcass is over 24 kg."));
            return Optional.empty();
        }
        return bounds(written.limits())
                .map(bounds -> isPiece ? new Condition.PieceWeighs(bounds) : new Condition.CarcassWeighs(bounds));
    }

    private Optional<List<Bound>> bounds(List<WrittenChoice.Limit> limits) {
        List<Amount> amounts = limits.stream().map(WrittenChoice.Limit::weight).toList();
        Optional<List<Quantity>> weights = amounts.size() == 2
                ? figures.both(amounts.get(0), amounts.get(1), Dimension.WEIGHT)
                : figures.quantity(amounts.get(0), Dimension.WEIGHT).map(List::of);
        return weights.map(read -> {
            List<Bound> bounds = new ArrayList<>(2);
            for (int i = 0; i < read.size(); i++) {
                bounds.add(new Bound(limits.get(i).kind(), read.get(i)));
            }
            return bounds;
        });
    }

    private Optional<Condition> is(WrittenChoice.Is written) {
        TradeName subject = written.subject().text();
        List<TradeName> values = written.values().stream().map(Name::text).toList();
        if (PIECE.contains(subject) || CARCASS.contains(subject)) {
            Diagnostic finding = report.finding(
                            ConditionCode.NOT_A_WEIGHT, written.values().get(0).span())
                    .with("value", values.get(0))
                    .with("subject", subject);
            report.add(finding.help("Write a limit: when " + subject + " is under 1.0 kg.")
                    .help("Or ask about a grade by its name: when season is winter."));
            return Optional.empty();
        }
        TradeName grade = withoutArticle(subject);
        return Optional.of(
                written.isRange()
                        ? new Condition.GradeFrom(grade, values.get(0), values.get(1))
                        : new Condition.GradeIs(grade, values));
    }

    /** "the season" is the grade "season". */
    private static TradeName withoutArticle(TradeName subject) {
        return subject.key().startsWith(ARTICLE) && subject.key().length() > ARTICLE.length()
                ? TradeName.of(
                        subject.text()
                                .substring(Math.min(
                                        ARTICLE.length(), subject.text().length())),
                        subject)
                : subject;
    }
}
