package dev.gambrel.tree.rules.estimate;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.estimate.Adjustment;
import dev.gambrel.tree.estimate.Dimensions;
import dev.gambrel.tree.estimate.Equation;
import dev.gambrel.tree.estimate.Measure;
import dev.gambrel.tree.inspection.EquationCode;
import dev.gambrel.tree.inspection.Vocabulary.Meaning;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Consumer;

/**
 * What each equation comes out as. Figures that are added, bounds, ranges and the unit of the result measure the same. What
 * stands on a name that is not known, or on something reported, is not judged.
 */
final class Dimensioning {
    private final Map<TradeName, Optional<Dimensions>> results = new HashMap<>();
    private final Estimates estimates;
    private final Consumer<Diagnostic> found;

    Dimensioning(Estimates estimates, Consumer<Diagnostic> found) {
        this.estimates = estimates;
        this.found = found;
        List<Measure> measures = estimates.predictors().measures();
        for (int i = 0; i < measures.size(); i++) {
            if (measures.get(i).scale().dimension() == Dimension.TEMPERATURE) {
                found.accept(temperature(Estimates.atMeasure(i)));
            }
        }
        estimates.order().sorted().forEach(equation -> results.putIfAbsent(equation.name(), check(equation)));
    }

    /** What a name stands for measures; nothing if that is not known. */
    Optional<Dimensions> of(TradeName name) {
        return estimates.vocabulary().meaning(name).flatMap(meaning -> {
            if (meaning instanceof Meaning.Weighed) {
                return Optional.of(Dimensions.of(Dimension.WEIGHT));
            } else if (meaning instanceof Meaning.Measured measured) {
                return dimensions(measured.measure().scale().dimension());
            }
            return results.getOrDefault(name, Optional.empty());
        });
    }

    static Optional<Dimensions> dimensions(Dimension dimension) {
        return dimension == Dimension.TEMPERATURE ? Optional.empty() : Optional.of(Dimensions.of(dimension));
    }

    static Diagnostic temperature(Place at) {
        return Diagnostic.of(EquationCode.TEMPERATURE, at)
                .help("Weights, lengths, areas, shares, times and plain numbers can be worked with.");
    }

    private Optional<Dimensions> check(Equation equation) {
        for (Equation.Held held : equation.held()) {
            of(held.of()).ifPresent(wanted -> {
                checkFits(held.range().low(), wanted, equation);
                if (held.range().high().dimension() != held.range().low().dimension()) {
                    checkFits(held.range().high(), wanted, equation);
                }
            });
        }
        Optional<Dimensions> result = new TermDimensions(equation, this, found).of();
        if (result.isEmpty()) {
            return result;
        }
        Optional<Dimension> plain = result.get().plain();
        Optional<Dimension> wanted = told(equation);
        if (plain.isEmpty() || wanted.isPresent() && !wanted.equals(plain)) {
            found.accept(otherwise(equation, result.get(), wanted));
            return Optional.empty();
        }
        equation.adjustments().forEach(adjustment -> checkBound(adjustment, result.get(), equation));
        if (equation.spread() instanceof Equation.Residual.Stated stated) {
            checkFits(stated.deviation(), result.get(), equation);
        }
        return result;
    }

    private static Optional<Dimension> told(Equation equation) {
        return equation.told() instanceof Equation.Told.In in
                ? Optional.of(in.unit().dimension())
                : Optional.empty();
    }

    private Diagnostic otherwise(Equation equation, Dimensions result, Optional<Dimension> wanted) {
        return Diagnostic.of(EquationCode.COMES_OUT_OTHERWISE, estimates.at(equation))
                .with("estimate", equation.name())
                .with("found", result.words())
                .with(
                        "wanted",
                        wanted.map(Dimension::words).orElse("a weight, a length, an area, a share, a time or a number"))
                .help("Look at the units of the figures: a figure for each mm is written 2.5 % per mm.");
    }

    private void checkBound(Adjustment adjustment, Dimensions result, Equation equation) {
        if (adjustment instanceof Adjustment.AtLeast least) {
            checkFits(least.limit(), result, equation);
        } else if (adjustment instanceof Adjustment.AtMost most) {
            checkFits(most.limit(), result, equation);
        }
    }

    private void checkFits(Quantity figure, Dimensions wanted, Equation equation) {
        if (!dimensions(figure.dimension()).equals(Optional.of(wanted))) {
            found.accept(Diagnostic.of(EquationCode.DOES_NOT_ADD, estimates.at(equation))
                    .with("estimate", equation.name())
                    .with("term", figure)
                    .with("found", figure.dimension().words())
                    .with("wanted", wanted.words())
                    .help("Give the figure the unit that is meant."));
        }
    }
}
