package dev.gambrel.compiler.estimate;

import dev.gambrel.compiler.meaning.Citations;
import dev.gambrel.compiler.meaning.Clauses;
import dev.gambrel.compiler.meaning.Located;
import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.EstimateClause;
import dev.gambrel.compiler.syntax.Figure;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.estimate.Adjustment;
import dev.gambrel.tree.estimate.Adjustment.Condition;
import dev.gambrel.tree.estimate.Equation;
import dev.gambrel.tree.estimate.Expression;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/** An estimate line. */
final class EquationLowering {
    private static final String DECIMALS_DROPPED = "decimals dropped";

    private final Located located;
    private final AnyFigures figures;
    private final Clauses clauses;
    private boolean unread;

    private EquationLowering(Located located) {
        this.located = located;
        this.figures = new AnyFigures(located.report());
        this.clauses = new Clauses(located);
        this.unread = located.line().damaged() || located.line().names().isEmpty();
    }

    /** The equation; nothing, after a finding, if some of it cannot be read. */
    static Optional<Equation> equation(Located located) {
        return new EquationLowering(located).equation();
    }

    private Optional<Equation> equation() {
        Optional<Expression> expression = clauses.one(EstimateClause.WorkedOut.class, "how it is worked out")
                .flatMap(written -> new ExpressionLowering(figures).expression(written.expression()));
        Equation.Told told = told();
        List<Equation.Held> held = held();
        List<Adjustment> adjustments = adjustments();
        Equation.Residual spread = spread();
        List<TradeName> sources = Citations.take(clauses);
        clauses.finish();
        return unread
                ? Optional.empty()
                : expression.map(read -> new Equation(
                        located.line().names().get(0).text(), read, told, held, adjustments, spread, sources));
    }

    private <T> Optional<T> need(Optional<T> read) {
        unread |= read.isEmpty();
        return read;
    }

    private Equation.Told told() {
        return clauses.one(EstimateClause.InUnit.class, "in which unit it is told")
                .flatMap(written -> need(figures.unit(written.unit(), written.span())))
                .<Equation.Told>map(Equation.Told.In::new)
                .orElse(new Equation.Told.NotStated());
    }

    private List<Equation.Held> held() {
        List<Equation.Held> held = new ArrayList<>();
        for (EstimateClause.Holds holds :
                clauses.all(EstimateClause.Holds.class, holds -> holds.range().more() instanceof Figure.More.UpTo)) {
            need(figures.range(holds.range()))
                    .ifPresent(range -> held.add(new Equation.Held(holds.of().text(), range)));
        }
        return held;
    }

    /** Limits and dropped decimals work in the order written. */
    private List<Adjustment> adjustments() {
        List<Adjustment> adjustments = new ArrayList<>();
        for (Clause clause : located.line().clauses()) {
            if (clause instanceof EstimateClause.Bound bound) {
                bound(bound).ifPresent(adjustments::add);
            } else if (clause instanceof Clause.Words words && dropsDecimals(words)) {
                adjustments.add(new Adjustment.DecimalsDropped());
            }
        }
        clauses.all(EstimateClause.Bound.class);
        clauses.all(Clause.Words.class, EquationLowering::dropsDecimals);
        return adjustments;
    }

    private static boolean dropsDecimals(Clause.Words words) {
        return TradeName.isAcceptable(words.words())
                && TradeName.of(words.words()).key().equals(DECIMALS_DROPPED.toLowerCase(Locale.ROOT));
    }

    private Optional<Adjustment> bound(EstimateClause.Bound bound) {
        Condition when = bound.when().isEmpty()
                ? new Condition.Always()
                : new Condition.Scored(
                        bound.when().get(0).text(), bound.when().get(1).text());
        return need(figures.quantity(bound.limit()))
                .map(limit -> bound.least() ? new Adjustment.AtLeast(limit, when) : new Adjustment.AtMost(limit, when));
    }

    private Equation.Residual spread() {
        return clauses.one(EstimateClause.Spread.class, "how far it strays")
                .flatMap(written -> need(figures.quantity(written.deviation())))
                .<Equation.Residual>map(Equation.Residual.Stated::new)
                .orElse(new Equation.Residual.NotStated());
    }
}
