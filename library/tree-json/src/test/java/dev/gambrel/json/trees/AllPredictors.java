package dev.gambrel.json.trees;

import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.estimate.Adjustment;
import dev.gambrel.tree.estimate.Equation;
import dev.gambrel.tree.estimate.Expression;
import dev.gambrel.tree.estimate.Measure;
import dev.gambrel.tree.estimate.Predictors;
import dev.gambrel.tree.estimate.Scale;
import dev.gambrel.tree.estimate.ValidRange;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;

/** Measures and equations of every kind, most of them without sense. */
final class AllPredictors {
    private static final Arbitrary<Unit> WRITTEN = Figures.units().filter(unit -> unit != Unit.NUMBER);

    private AllPredictors() {}

    static Arbitrary<Predictors> predictors() {
        Arbitrary<Predictors> some = Combinators.combine(Words.few(measures()), Words.few(equations()))
                .as(Predictors::new);
        return Arbitraries.oneOf(Arbitraries.just(Predictors.NONE), some);
    }

    private static Arbitrary<Measure> measures() {
        Arbitrary<Scale.Score> score =
                Combinators.combine(Words.names(), Figures.decimals()).as(Scale.Score::new);
        Arbitrary<Scale> scored = Words.few(score).map(Scale.Scored::new);
        Arbitrary<Scale> inUnit = Figures.units().map(Scale.In::new);
        return Combinators.combine(Words.names(), Arbitraries.oneOf(scored, inUnit), Words.free(), ranges())
                .as(Measure::new);
    }

    private static Arbitrary<ValidRange.Stated> stated() {
        return Combinators.combine(Figures.quantities(), Figures.quantities()).as(ValidRange.Stated::new);
    }

    private static Arbitrary<ValidRange> ranges() {
        return Arbitraries.oneOf(stated().map(range -> range), Arbitraries.create(ValidRange.NotStated::new));
    }

    private static Arbitrary<Equation> equations() {
        Arbitrary<Equation.Told> told =
                Arbitraries.oneOf(WRITTEN.map(Equation.Told.In::new), Arbitraries.create(Equation.Told.NotStated::new));
        Arbitrary<Equation.Held> held =
                Combinators.combine(Words.names(), stated()).as(Equation.Held::new);
        Arbitrary<Equation.Residual> spread = Arbitraries.oneOf(
                Figures.quantities().map(Equation.Residual.Stated::new),
                Arbitraries.create(Equation.Residual.NotStated::new));
        return Combinators.combine(
                        Words.names(),
                        expressions(3),
                        told,
                        Words.few(held),
                        Words.few(adjustments()),
                        spread,
                        Words.nameLists())
                .as(Equation::new);
    }

    private static Arbitrary<Adjustment> adjustments() {
        Arbitrary<Adjustment.Condition> scored =
                Combinators.combine(Words.names(), Words.names()).as(Adjustment.Condition.Scored::new);
        Arbitrary<Adjustment.Condition> when =
                Arbitraries.oneOf(scored, Arbitraries.create(Adjustment.Condition.Always::new));
        return Arbitraries.oneOf(
                Combinators.combine(Figures.quantities(), when).as(Adjustment.AtLeast::new),
                Combinators.combine(Figures.quantities(), when).as(Adjustment.AtMost::new),
                Arbitraries.create(Adjustment.DecimalsDropped::new));
    }

    private static Arbitrary<Expression> expressions(int deep) {
        Arbitrary<Expression> coefficient =
                Combinators.combine(Figures.quantities(), Words.few(WRITTEN)).as(Expression.Coefficient::new);
        Arbitrary<Expression> named = Words.names().map(Expression.Named::new);
        if (deep == 0) {
            return Arbitraries.oneOf(coefficient, named);
        }
        Arbitrary<Expression> inner = expressions(deep - 1);
        Arbitrary<List<Expression>> several = inner.list().ofMinSize(1).ofMaxSize(3);
        return Arbitraries.oneOf(
                coefficient,
                named,
                several.map(Expression.Sum::new),
                several.map(Expression.Product::new),
                inner.map(Expression.Negative::new),
                inner.map(Expression.Inverse::new));
    }
}
