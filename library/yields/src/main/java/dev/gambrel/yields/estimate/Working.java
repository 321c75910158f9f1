package dev.gambrel.yields.estimate;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.estimate.Adjustment;
import dev.gambrel.tree.estimate.Dimensions;
import dev.gambrel.tree.estimate.Equation;
import dev.gambrel.tree.estimate.Scale;
import dev.gambrel.tree.inspection.EquationOrder;
import dev.gambrel.tree.inspection.Vocabulary;
import dev.gambrel.tree.inspection.Vocabulary.Meaning;
import java.util.Arrays;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** The working out of equations for one carcass, one after another. Used once. */
final class Working {
    private static final int MOST_DIGITS = 2_466;

    private final Map<TradeName, Amount> results = new HashMap<>();
    private final Vocabulary vocabulary;
    private final Measurements given;

    Working(Vocabulary vocabulary, Measurements given) {
        this.vocabulary = vocabulary;
        this.given = given;
    }

    /** Works out equations, each after those that it names, and gives the last. */
    Result<Estimated> result(List<Equation> equations, List<Diagnostic> warnings) {
        Equation last = equations.get(equations.size() - 1);
        try {
            for (Equation equation : equations.subList(0, equations.size() - 1)) {
                results.put(equation.name(), adjusted(equation));
            }
        } catch (CannotBeWorkedOut why) {
            return Result.failed(Stream.concat(warnings.stream(), Stream.of(why.finding(last.name())))
                    .toList());
        }
        return next(last, warnings);
    }

    /** Works out one equation more, when those that it names are worked out. */
    Result<Estimated> next(Equation last, List<Diagnostic> warnings) {
        try {
            results.put(last.name(), adjusted(last));
        } catch (CannotBeWorkedOut why) {
            return Result.failed(Stream.concat(warnings.stream(), Stream.of(why.finding(last.name())))
                    .toList());
        }
        Unit unit = unit(last, results.get(last.name()));
        Fraction value = results.get(last.name()).value().times(perUnit(unit));
        return Quantity.isAcceptable(value.decimal())
                ? Result.of(new Estimated(last, new Quantity(value.decimal(), unit)), warnings)
                : Result.failed(List.of(tooLong(last.name())));
    }

    static Diagnostic tooLong(TradeName estimate) {
        return Diagnostic.of(MeasurementCode.TOO_LONG, ReadingCheck.PLACE)
                .with("estimate", estimate)
                .with("digits", MOST_DIGITS)
                .help("Look for a figure with a slipped point.");
    }

    private static Fraction perUnit(Unit unit) {
        return Fraction.of(unit.factor()).inverse();
    }

    /** What a name stands for comes to. */
    Amount amount(TradeName name) {
        Meaning meaning = vocabulary.meaning(name).orElseThrow();
        if (meaning instanceof Meaning.Estimated) {
            return results.get(name);
        }
        Reading reading = given.reading(name).orElseThrow();
        if (reading instanceof Reading.Figure figure) {
            return Amount.of(figure.value());
        }
        Scale.Scored scored =
                (Scale.Scored) ((Meaning.Measured) meaning).measure().scale();
        Scale.Score score = scored.score(((Reading.Score) reading).word()).orElseThrow();
        return new Amount(Fraction.of(score.number()), Dimensions.NUMBER);
    }

    private Amount adjusted(Equation equation) throws CannotBeWorkedOut {
        Amount amount = new Arithmetic(this).of(equation.expression());
        Unit unit = unit(equation, amount);
        for (Adjustment adjustment : equation.adjustments()) {
            if (holds(adjustment)) {
                amount = adjusted(amount, adjustment, unit);
            }
        }
        return amount;
    }

    private static Amount adjusted(Amount amount, Adjustment adjustment, Unit unit) {
        if (adjustment instanceof Adjustment.AtLeast least) {
            return amount.atLeast(Amount.of(least.limit()));
        } else if (adjustment instanceof Adjustment.AtMost most) {
            return amount.atMost(Amount.of(most.limit()));
        }
        Fraction whole = amount.value().times(perUnit(unit)).whole();
        return new Amount(whole.times(Fraction.of(unit.factor())), amount.dimensions());
    }

    private boolean holds(Adjustment adjustment) {
        return EquationOrder.condition(adjustment)
                .map(scored -> amount(scored.measure()).equals(new Amount(number(scored), Dimensions.NUMBER)))
                .orElse(true);
    }

    /** The score's number: a carcass may have been given the word or the number. */
    private Fraction number(Adjustment.Condition.Scored when) {
        Meaning.Measured measured =
                (Meaning.Measured) vocabulary.meaning(when.measure()).orElseThrow();
        return Fraction.of(((Scale.Scored) measured.measure().scale())
                .score(when.word())
                .orElseThrow()
                .number());
    }

    /** The unit that is written, or the first of the dimension. */
    private static Unit unit(Equation equation, Amount amount) {
        if (equation.told() instanceof Equation.Told.In in) {
            return in.unit();
        }
        Dimension dimension = amount.dimensions().plain().orElseThrow(IllegalArgumentException::new);
        return Arrays.stream(Unit.values())
                .filter(unit -> unit.dimension() == dimension)
                .findFirst()
                .orElseThrow();
    }
}
