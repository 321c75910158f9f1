package dev.gambrel.tree.rules.estimate;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.estimate.Equation;
import dev.gambrel.tree.estimate.Expression;
import dev.gambrel.tree.estimate.Expression.Coefficient;
import dev.gambrel.tree.estimate.Expression.Inverse;
import dev.gambrel.tree.estimate.Expression.Named;
import dev.gambrel.tree.estimate.Expression.Negative;
import dev.gambrel.tree.estimate.Expression.Product;
import dev.gambrel.tree.estimate.Expression.Sum;
import dev.gambrel.tree.inspection.EquationCode;
import dev.gambrel.tree.inspection.Vocabulary.Meaning;
import java.util.HashMap;
import java.util.Map;
import java.util.function.Consumer;

/**
 * Within the ranges that are stated, nothing is divided by what may be 0. Where a range is not stated nothing is known, and
 * it is seen when the carcass has been measured.
 */
final class Divisors {
    private final Map<TradeName, Bounds> results = new HashMap<>();
    private final Estimates estimates;
    private final Consumer<Diagnostic> found;

    private Divisors(Estimates estimates, Consumer<Diagnostic> found) {
        this.estimates = estimates;
        this.found = found;
    }

    static void check(Estimates estimates, Consumer<Diagnostic> found) {
        Divisors rule = new Divisors(estimates, found);
        for (Equation equation : estimates.order().sorted()) {
            rule.results.putIfAbsent(equation.name(), rule.result(equation));
        }
    }

    /** What is done to a result is not followed: of an equation with adjustments nothing is known. */
    private Bounds result(Equation equation) {
        Bounds bounds = bounds(equation.expression(), equation);
        return equation.adjustments().isEmpty() ? bounds : Bounds.UNKNOWN;
    }

    private Bounds bounds(Expression expression, Equation equation) {
        if (expression instanceof Sum sum) {
            Bounds result = Bounds.exactly(0);
            for (Expression term : sum.terms()) {
                result = result.plus(bounds(term, equation));
            }
            return result;
        } else if (expression instanceof Product product) {
            Bounds result = Bounds.exactly(1);
            for (Expression factor : product.factors()) {
                result = result.times(bounds(factor, equation));
            }
            return result;
        } else if (expression instanceof Negative negative) {
            return bounds(negative.of(), equation).negative();
        } else if (expression instanceof Inverse inverse) {
            return inverse(bounds(inverse.of(), equation), equation);
        }
        return expression instanceof Named named ? named(named.name()) : Bounds.of((Coefficient) expression);
    }

    private Bounds inverse(Bounds divisor, Equation equation) {
        if (divisor.isKnown() && divisor.holdsNothing()) {
            found.accept(Diagnostic.of(EquationCode.MAY_DIVIDE_BY_NOTHING, estimates.at(equation))
                    .with("estimate", equation.name())
                    .with("low", divisor.lowInWords())
                    .with("high", divisor.highInWords())
                    .help("Narrow the range of what is divided by, so that it stays clear of 0."));
            return Bounds.UNKNOWN;
        }
        return divisor.inverse();
    }

    private Bounds named(TradeName name) {
        Meaning meaning = estimates.vocabulary().meaning(name).orElse(null);
        if (meaning instanceof Meaning.Measured measured) {
            return Bounds.of(measured.measure());
        }
        return meaning instanceof Meaning.Estimated ? results.getOrDefault(name, Bounds.UNKNOWN) : Bounds.UNKNOWN;
    }
}
