package dev.gambrel.tree.rules.estimate;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.tree.estimate.Dimensions;
import dev.gambrel.tree.estimate.Equation;
import dev.gambrel.tree.estimate.Expression;
import dev.gambrel.tree.estimate.Expression.Coefficient;
import dev.gambrel.tree.estimate.Expression.Inverse;
import dev.gambrel.tree.estimate.Expression.Named;
import dev.gambrel.tree.estimate.Expression.Negative;
import dev.gambrel.tree.estimate.Expression.Product;
import dev.gambrel.tree.estimate.Expression.Sum;
import dev.gambrel.tree.inspection.EquationCode;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** The dimensions of one equation, term by term as written. */
final class TermDimensions {
    private final Equation equation;
    private final Dimensioning others;
    private final Consumer<Diagnostic> found;
    private int terms;

    TermDimensions(Equation equation, Dimensioning others, Consumer<Diagnostic> found) {
        this.equation = equation;
        this.others = others;
        this.found = found;
    }

    /** Of the whole; nothing if that cannot be told. Asked once. */
    Optional<Dimensions> of() {
        return of(equation.expression());
    }

    private Optional<Dimensions> of(Expression expression) {
        if (expression instanceof Sum sum) {
            return sum(sum);
        } else if (expression instanceof Product product) {
            return product(product);
        } else if (expression instanceof Negative negative) {
            return of(negative.of());
        } else if (expression instanceof Inverse inverse) {
            return of(inverse.of()).map(Dimensions::inverse);
        }
        int index = terms++;
        return expression instanceof Named named
                ? others.of(named.name())
                : coefficient((Coefficient) expression, index);
    }

    private Optional<Dimensions> coefficient(Coefficient coefficient, int index) {
        boolean temperature = Stream.concat(Stream.of(coefficient.figure().unit()), coefficient.per().stream())
                .anyMatch(unit -> unit.dimension() == Dimension.TEMPERATURE);
        if (temperature) {
            found.accept(Dimensioning.temperature(Estimates.atTerm(equation, index)));
            return Optional.empty();
        }
        return Optional.of(Dimensions.of(coefficient));
    }

    private Optional<Dimensions> product(Product product) {
        Optional<Dimensions> result = Optional.of(Dimensions.NUMBER);
        for (Expression factor : product.factors()) {
            Optional<Dimensions> next = of(factor);
            result = result.flatMap(before -> next.map(before::times));
        }
        return result;
    }

    /** All terms measure what the first one does whose dimensions are known. */
    private Optional<Dimensions> sum(Sum sum) {
        Optional<Dimensions> wanted = Optional.empty();
        boolean sound = !sum.terms().isEmpty();
        for (Expression term : sum.terms()) {
            int start = terms;
            Optional<Dimensions> next = of(term);
            if (next.isPresent() && wanted.isPresent() && !next.equals(wanted)) {
                found.accept(doesNotAdd(start, term, next.get(), wanted.get()));
            }
            sound &= next.isPresent() && (wanted.isEmpty() || next.equals(wanted));
            wanted = wanted.isEmpty() ? next : wanted;
        }
        return sound ? wanted : Optional.empty();
    }

    private Diagnostic doesNotAdd(int start, Expression term, Dimensions next, Dimensions wanted) {
        return Diagnostic.of(EquationCode.DOES_NOT_ADD, Estimates.atTerm(equation, start))
                .with("estimate", equation.name())
                .with("term", InWords.of(term))
                .with("found", next.words())
                .with("wanted", wanted.words())
                .help("A figure for each mm is written 2.5 % per mm; a figure alone is a plain number.");
    }
}
