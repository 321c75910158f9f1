package dev.gambrel.compiler.parse;

import dev.gambrel.compiler.internal.grammar.GambrelParser.BetweenClauseContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.BoundClauseContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.ClauseContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.ExactlyClauseContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.LimitEndContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.QuantityContext;
import dev.gambrel.compiler.internal.grammar.GambrelParser.TermLineContext;
import dev.gambrel.compiler.syntax.Amount;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.Name;
import dev.gambrel.compiler.syntax.PortionClause;
import dev.gambrel.compiler.syntax.TermClause;
import dev.gambrel.text.Span;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** Limits: of portions, of distances, and of what is supplied. */
final class LimitConverter {
    private final NameConverter names;
    private final FigureConverter figures;

    LimitConverter(NameConverter names, FigureConverter figures) {
        this.names = names;
        this.figures = figures;
    }

    /** The clause, if it is a limit. */
    Optional<Clause> clause(ClauseContext clause, Span span) {
        if (clause instanceof BetweenClauseContext c) {
            return Optional.of(limit(c, TermClause.Kind.BETWEEN, c.quantity(), c.limitEnd(), span));
        } else if (clause instanceof BoundClauseContext c) {
            TermClause.Kind kind = c.LEAST() != null ? TermClause.Kind.AT_LEAST : TermClause.Kind.AT_MOST;
            return Optional.of(limit(c, kind, List.of(c.quantity()), c.limitEnd(), span));
        }
        return clause instanceof ExactlyClauseContext c
                ? Optional.of(limit(c, TermClause.Kind.EXACTLY, List.of(c.quantity()), c.limitEnd(), span))
                : Optional.empty();
    }

    private Clause limit(
            ClauseContext clause, TermClause.Kind kind, List<QuantityContext> written, LimitEndContext end, Span span) {
        List<Amount> amounts = written.stream().map(figures::amount).toList();
        if (end != null && end.OUTSIDE() != null) {
            return new TermClause.Outside(amounts.get(0), span);
        }
        boolean ofPortion = end == null || end.THICK() != null || end.FROM() != null;
        return clause.getParent() instanceof TermLineContext || !ofPortion
                ? new TermClause.Limited(kind, amounts, end(end), span)
                : ofPortion(kind, amounts, end, span);
    }

    private Clause ofPortion(TermClause.Kind kind, List<Amount> amounts, LimitEndContext end, Span span) {
        boolean thick = end != null && end.THICK() != null;
        boolean least = kind == TermClause.Kind.AT_LEAST;
        Amount low = amounts.get(0);
        Amount high = amounts.get(amounts.size() - 1);
        if (end != null && end.FROM() != null) {
            return kind == TermClause.Kind.BETWEEN || kind == TermClause.Kind.EXACTLY
                    ? new TermClause.Limited(kind, amounts, end(end), span)
                    : new PortionClause.BoundFrom(least, low, names.name(end.name(0)), span);
        } else if (kind == TermClause.Kind.BETWEEN || kind == TermClause.Kind.EXACTLY) {
            return thick ? new PortionClause.ThickBetween(low, high, span) : new Clause.Between(low, high, span);
        }
        return new PortionClause.Bound(least, low, thick, span);
    }

    private TermClause.End end(LimitEndContext end) {
        if (end == null) {
            return TermClause.End.NONE;
        }
        List<Name> named = end.name().stream().map(names::name).toList();
        return new TermClause.End(end.getStart().getText().toLowerCase(Locale.ROOT), named);
    }
}
