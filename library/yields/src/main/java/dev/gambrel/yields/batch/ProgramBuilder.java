package dev.gambrel.yields.batch;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.estimate.Adjustment;
import dev.gambrel.tree.estimate.Equation;
import dev.gambrel.tree.estimate.Expression;
import dev.gambrel.tree.estimate.Expression.Coefficient;
import dev.gambrel.tree.estimate.Expression.Inverse;
import dev.gambrel.tree.estimate.Expression.Named;
import dev.gambrel.tree.estimate.Expression.Negative;
import dev.gambrel.tree.estimate.Expression.Product;
import dev.gambrel.tree.estimate.Expression.Sum;
import dev.gambrel.tree.estimate.Scale;
import dev.gambrel.tree.inspection.EquationOrder;
import dev.gambrel.tree.inspection.Vocabulary.Meaning;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;

/** Turns equations into the steps of a program. */
final class ProgramBuilder {
    private final Columns columns;
    private final List<TradeName> results = new ArrayList<>();
    private final List<Integer> steps = new ArrayList<>();
    private final List<Double> figures = new ArrayList<>();
    private int height;
    private int highest;

    ProgramBuilder(Columns columns) {
        this.columns = columns;
    }

    /** Takes equations, each after those that it names. */
    Program.Steps of(List<Equation> equations) {
        for (Equation equation : equations) {
            work(equation.expression());
            equation.adjustments().forEach(adjustment -> adjust(equation, adjustment));
            step(Program.STORE, results.size(), -1);
            results.add(equation.name());
        }
        return new Program.Steps(
                steps.stream().mapToInt(Integer::intValue).toArray(),
                figures.stream().mapToDouble(Double::doubleValue).toArray(),
                highest,
                results.size());
    }

    private void step(int kind, int on, int grows) {
        steps.add(kind);
        steps.add(on);
        height += grows;
        highest = Math.max(highest, height);
    }

    private int figure(double value) {
        figures.add(value);
        return figures.size() - 1;
    }

    private void work(Expression expression) {
        if (expression instanceof Sum sum) {
            chain(sum.terms(), Program.ADD);
        } else if (expression instanceof Product product) {
            chain(product.factors(), Program.MULTIPLY);
        } else if (expression instanceof Negative negative) {
            work(negative.of());
            step(Program.NEGATE, 0, 0);
        } else if (expression instanceof Inverse inverse) {
            work(inverse.of());
            step(Program.INVERT, 0, 0);
        } else if (expression instanceof Named named) {
            name(named.name());
        } else {
            step(Program.FIGURE, figure(value((Coefficient) expression)), 1);
        }
    }

    private void chain(List<Expression> parts, int operation) {
        work(parts.get(0));
        parts.subList(1, parts.size()).forEach(part -> {
            work(part);
            step(operation, 0, -1);
        });
    }

    private void name(TradeName name) {
        int column = columns.column(name);
        if (columns.vocabulary().meaning(name).orElseThrow() instanceof Meaning.Estimated) {
            step(Program.RESULT, results.indexOf(name), 1);
        } else if (column == Columns.CARCASS_WEIGHT) {
            step(Program.WEIGHT, 0, 1);
        } else {
            step(Program.READING, column, 1);
        }
    }

    private static double value(Coefficient coefficient) {
        BigDecimal under = BigDecimal.ONE;
        for (Unit unit : coefficient.per()) {
            under = under.multiply(unit.factor());
        }
        return coefficient
                .figure()
                .common()
                .divide(under, MathContext.DECIMAL128)
                .doubleValue();
    }

    /** A condition skips the one step that follows it. */
    private void adjust(Equation equation, Adjustment adjustment) {
        EquationOrder.condition(adjustment).ifPresent(scored -> {
            name(scored.measure());
            step(Program.ONLY_IF, figure(number(scored)), -1);
        });
        if (adjustment instanceof Adjustment.AtLeast least) {
            step(Program.AT_LEAST, figure(least.limit().value()), 0);
        } else if (adjustment instanceof Adjustment.AtMost most) {
            step(Program.AT_MOST, figure(most.limit().value()), 0);
        } else {
            step(Program.DROP_DECIMALS, figure(toldIn(equation)), 0);
        }
    }

    private double number(Adjustment.Condition.Scored when) {
        Meaning.Measured measured =
                (Meaning.Measured) columns.vocabulary().meaning(when.measure()).orElseThrow();
        return ((Scale.Scored) measured.measure().scale())
                .score(when.word())
                .orElseThrow()
                .number()
                .doubleValue();
    }

    private double toldIn(Equation equation) {
        return equation.told() instanceof Equation.Told.In in && in.unit().dimension() != Dimension.TEMPERATURE
                ? in.unit().factor().doubleValue()
                : 1;
    }
}
