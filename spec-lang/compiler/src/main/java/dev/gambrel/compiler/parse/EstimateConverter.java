package dev.gambrel.compiler.parse;

import dev.gambrel.compiler.internal.grammar.GambrelLexer;
import dev.gambrel.compiler.internal.grammar.GambrelParser.BoundClauseContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.ClauseContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.EstimateLineContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.EstimatedClauseContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.FigureClauseContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.HeldClauseContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.InClauseContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.LimitEndContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.SpreadClauseContext;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.EstimateClause;
import dev.gambrel.compiler.syntax.Figure;
import dev.gambrel.compiler.syntax.Name;
import dev.gambrel.text.Span;
import java.util.List;
import java.util.Optional;
import org.antlr.v4.runtime.ParserRuleContext;

/** What measures and estimates say. */
final class EstimateConverter {
    private final Offsets offsets;
    private final NameConverter names;
    private final FigureConverter figures;
    private final ExpressionConverter expressions;
    private final Wholeness whole;

    EstimateConverter(Offsets offsets, NameConverter names, FigureConverter figures, Wholeness whole) {
        this.offsets = offsets;
        this.names = names;
        this.figures = figures;
        this.expressions = new ExpressionConverter(offsets, names, figures);
        this.whole = whole;
    }

    /** The equation of a line, if it could be read. */
    List<Clause> workedOut(EstimateLineContext line) {
        return whole.of(line.expression())
                ? List.of(new EstimateClause.WorkedOut(
                        expressions.expression(line.expression()), offsets.of(line.expression())))
                : List.of();
    }

    /** The clause, if it is one of those of measures and estimates. */
    Optional<Clause> clause(ClauseContext clause, Span span) {
        if (clause instanceof FigureClauseContext c && c.EQUALS() != null) {
            return Optional.of(new EstimateClause.Score(figures.figure(c.expectation()), names.name(c.name()), span));
        } else if (clause instanceof InClauseContext c && c.unit() != null) {
            return Optional.of(new EstimateClause.InUnit(c.unit().getText(), offsets.of(c.unit())));
        } else if (clause instanceof SpreadClauseContext c) {
            return Optional.of(new EstimateClause.Spread(figures.amount(c.quantity()), span));
        } else if (clause instanceof HeldClauseContext c) {
            Figure range = figures.figure(c.figure());
            return Optional.of(new EstimateClause.Holds(names.name(c.name()), range, span));
        } else if (clause instanceof BoundClauseContext c && isOfEquation(c)) {
            return Optional.of(bound(c, span));
        }
        return clause instanceof EstimatedClauseContext c
                ? Optional.of(new EstimateClause.EstimatedBy(names.name(c.name()), span))
                : Optional.empty();
    }

    /** On other lines "at least" speaks of portions and distances. */
    private static boolean isOfEquation(BoundClauseContext clause) {
        ParserRuleContext line = clause.getParent().getParent();
        return line.getStart().getType() == GambrelLexer.ESTIMATE;
    }

    private Clause bound(BoundClauseContext context, Span span) {
        LimitEndContext end = context.limitEnd();
        List<Name> when = end == null || end.EQUALS() == null
                ? List.of()
                : end.name().stream().map(names::name).toList();
        return new EstimateClause.Bound(context.LEAST() != null, figures.amount(context.quantity()), when, span);
    }
}
