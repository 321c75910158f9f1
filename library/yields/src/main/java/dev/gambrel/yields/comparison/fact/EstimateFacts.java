package dev.gambrel.yields.comparison.fact;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.tree.estimate.Adjustment;
import dev.gambrel.tree.estimate.Equation;
import dev.gambrel.tree.estimate.Measure;
import dev.gambrel.tree.estimate.Predictors;
import dev.gambrel.tree.estimate.Scale;
import dev.gambrel.tree.estimate.ValidRange;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** What is measured on the carcass, and what is worked out of it. */
final class EstimateFacts {
    private EstimateFacts() {}

    static void add(Predictors predictors, Facts facts) {
        for (int i = 0; i < predictors.measures().size(); i++) {
            Measure measure = predictors.measures().get(i);
            facts.figure("measure " + measure.name().key(), Aspect.MEASURE, i, value(measure), words(measure));
        }
        for (int i = 0; i < predictors.equations().size(); i++) {
            Equation equation = predictors.equations().get(i);
            facts.figure("estimate " + equation.name().key(), Aspect.ESTIMATE, i, value(equation), words(equation));
            facts.sources("the estimate " + equation.name().key(), Aspect.ESTIMATE, i, equation.sources());
        }
    }

    private static List<String> value(Measure measure) {
        List<String> value = new ArrayList<>(List.of(measure.where()));
        if (measure.scale() instanceof Scale.Scored scored) {
            scored.scores().stream()
                    .map(score -> score.word().key() + " = " + Exact.number(score.number()))
                    .sorted()
                    .forEach(value::add);
        } else {
            value.add(measure.scale().dimension().toString());
        }
        value.addAll(range(measure.range()));
        return value;
    }

    private static List<String> range(ValidRange range) {
        return range instanceof ValidRange.Stated stated
                ? List.of(Exact.of(stated.low()), Exact.of(stated.high()))
                : List.of();
    }

    private static String words(Measure measure) {
        String scale = measure.scale() instanceof Scale.Scored scored
                ? scored.scores().stream()
                        .map(score -> score.word() + " = " + score.number().toPlainString())
                        .collect(Collectors.joining(", "))
                : "in " + ((Scale.In) measure.scale()).unit().symbol();
        return scale
                + (measure.where().isEmpty() ? "" : ", " + measure.where())
                + (measure.range() instanceof ValidRange.Stated range
                        ? ", " + range.low() + " to " + range.high()
                        : "");
    }

    private static List<String> value(Equation equation) {
        List<String> value = new ArrayList<>(ExpressionWords.inOrder(equation.expression()));
        value.add(
                equation.told() instanceof Equation.Told.In in
                        ? in.unit().dimension().toString()
                        : "");
        equation.held().stream()
                .map(held -> held.of().key() + " " + range(held.range()))
                .sorted(Comparator.naturalOrder())
                .forEach(value::add);
        equation.adjustments().forEach(adjustment -> value.add(value(adjustment)));
        value.add(equation.spread() instanceof Equation.Residual.Stated stated ? Exact.of(stated.deviation()) : "");
        return value;
    }

    private static String value(Adjustment adjustment) {
        if (adjustment instanceof Adjustment.AtLeast least) {
            return "at least " + Exact.of(least.limit()) + value(least.when());
        }
        return adjustment instanceof Adjustment.AtMost most
                ? "at most " + Exact.of(most.limit()) + value(most.when())
                : "decimals dropped";
    }

    private static String value(Adjustment.Condition when) {
        return when instanceof Adjustment.Condition.Scored scored
                ? " where " + scored.measure().key() + " is " + scored.word().key()
                : "";
    }

    private static String words(Equation equation) {
        return ExpressionWords.of(equation.expression())
                + (equation.spread() instanceof Equation.Residual.Stated stated ? " ± " + stated.deviation() : "")
                + (equation.told() instanceof Equation.Told.In in
                        ? ", in " + in.unit().symbol()
                        : "");
    }
}
