package dev.gambrel.compiler.parse;

import dev.gambrel.compiler.internal.grammar.GambrelParser.*;
import dev.gambrel.compiler.syntax.Amount;
import dev.gambrel.compiler.syntax.BenchClause;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.Figure;
import dev.gambrel.compiler.syntax.PortionClause;
import dev.gambrel.text.Span;
import dev.gambrel.tree.portion.Precedence;
import java.util.List;
import java.util.Optional;

/** Clauses of portions and of the bench. */
final class PortionConverter {
    private final NameConverter names;
    private final FigureConverter figures;
    private final Wholeness whole;
    private final LimitConverter limits;

    PortionConverter(NameConverter names, FigureConverter figures, Wholeness whole) {
        this.names = names;
        this.figures = figures;
        this.whole = whole;
        this.limits = new LimitConverter(names, figures);
    }

    /** The clause, or nothing if it is one of another kind. */
    Optional<Clause> clause(ClauseContext clause, Span span) {
        Optional<Clause> limit = limits.clause(clause, span);
        if (limit.isPresent()) {
            return limit;
        } else if (clause instanceof NumberClauseContext c) {
            String number = c.WHOLE() != null
                    ? "1"
                    : c.HALVED() != null ? "2" : c.NUMBER().getText();
            return Optional.of(new PortionClause.Into(number, span));
        } else if (clause instanceof PrecedenceClauseContext c) {
            return Optional.of(
                    new PortionClause.Rules(c.WEIGHT() != null ? Precedence.WEIGHT : Precedence.THICKNESS, span));
        } else if (clause instanceof SmallestClauseContext c) {
            return Optional.of(new PortionClause.Smallest(figures.amount(c.quantity()), span));
        } else if (clause instanceof EndPiecesClauseContext c) {
            List<Figure> weight = whole.of(c.expectation()) ? List.of(figures.figure(c.expectation())) : List.of();
            return Optional.of(new PortionClause.EndPieces(weight, names.name(c.name()), span));
        } else if (clause instanceof KerfClauseContext c) {
            return Optional.of(new PortionClause.Kerf(figures.amount(c.quantity()), span));
        } else if (clause instanceof LengthClauseContext c) {
            return Optional.of(new PortionClause.Length(figures.figure(c.expectation()), span));
        } else if (clause instanceof DirectionClauseContext) {
            return Optional.of(new PortionClause.Direction(names.slice(span), span));
        }
        return finish(clause, span);
    }

    private Optional<Clause> finish(ClauseContext clause, Span span) {
        if (clause instanceof TiedClauseContext c) {
            return Optional.of(
                    c.NUMBER() != null
                            ? new PortionClause.Tied(c.NUMBER().getText(), span)
                            : new PortionClause.Held(false, figures.amount(c.quantity()), span));
        } else if (clause instanceof NettedClauseContext c) {
            return Optional.of(new PortionClause.Held(true, figures.amount(c.quantity()), span));
        } else if (clause instanceof PackedClauseContext c) {
            String number =
                    c.ONE() != null ? "1" : c.TWO() != null ? "2" : c.NUMBER().getText();
            return Optional.of(new PortionClause.Packed(number, names.name(c.name()), span));
        } else if (clause instanceof TareClauseContext c) {
            return Optional.of(new PortionClause.Tare(names.name(c.name()), figures.amount(c.quantity()), span));
        }
        return bench(clause, span);
    }

    private Optional<Clause> bench(ClauseContext clause, Span span) {
        if (clause instanceof AfterClauseContext c) {
            return Optional.of(new BenchClause.After(names.name(c.name()), span));
        } else if (clause instanceof MatchedClauseContext c) {
            List<Amount> within = whole.of(c.quantity()) ? List.of(figures.amount(c.quantity())) : List.of();
            return Optional.of(new BenchClause.Matched(within, span));
        } else if (clause instanceof PlanedClauseContext) {
            return Optional.of(new BenchClause.Planed(span));
        } else if (clause instanceof PracticallyFreeClauseContext) {
            return Optional.of(new BenchClause.PracticallyFree(span));
        }
        return Optional.empty();
    }
}
