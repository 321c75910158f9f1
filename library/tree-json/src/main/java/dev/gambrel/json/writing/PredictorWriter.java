package dev.gambrel.json.writing;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.tree.estimate.Adjustment;
import dev.gambrel.tree.estimate.Equation;
import dev.gambrel.tree.estimate.Expression;
import dev.gambrel.tree.estimate.Measure;
import dev.gambrel.tree.estimate.Scale;
import dev.gambrel.tree.estimate.ValidRange;
import java.util.Optional;

/** Writes what is measured and what is estimated. A plain number has no unit. */
final class PredictorWriter {
    private PredictorWriter() {}

    static Canonical measure(Measure measure) {
        Canonical.Fields fields = Canonical.fields().put("name", measure.name());
        if (measure.scale() instanceof Scale.In in) {
            fields.putUnlessEmpty("unit", in.unit().symbol());
        } else {
            fields.put("scores", Canonical.items(((Scale.Scored) measure.scale()).scores(), PredictorWriter::score));
        }
        return fields.putUnlessEmpty("where", measure.where()).putIfStated("range", range(measure.range()));
    }

    private static Canonical score(Scale.Score score) {
        return Canonical.fields().put("word", score.word()).put("number", score.number());
    }

    private static Optional<Canonical> range(ValidRange range) {
        return range instanceof ValidRange.Stated stated ? Optional.of(range(stated)) : Optional.empty();
    }

    private static Canonical range(ValidRange.Stated range) {
        return Canonical.fields().put("low", figure(range.low())).put("high", figure(range.high()));
    }

    static Canonical equation(Equation equation) {
        return Canonical.fields()
                .put("name", equation.name())
                .put("expression", expression(equation.expression()))
                .putIfStated("unit", told(equation.told()))
                .putUnlessEmpty("for", equation.held(), PredictorWriter::held)
                .putUnlessEmpty("adjustments", equation.adjustments(), PredictorWriter::adjustment)
                .putIfStated("sd", spread(equation.spread()))
                .putUnlessEmpty("sources", equation.sources());
    }

    private static Optional<Canonical> told(Equation.Told told) {
        return told instanceof Equation.Told.In in
                ? Optional.of(new Canonical.Words(in.unit().symbol()))
                : Optional.empty();
    }

    private static Canonical held(Equation.Held held) {
        return Canonical.fields().put("of", held.of()).put("range", range(held.range()));
    }

    private static Canonical adjustment(Adjustment adjustment) {
        if (adjustment instanceof Adjustment.AtLeast least) {
            return bound("at least", least.limit(), least.when());
        }
        return adjustment instanceof Adjustment.AtMost most
                ? bound("at most", most.limit(), most.when())
                : Canonical.kind("decimals dropped");
    }

    private static Canonical bound(String kind, Quantity limit, Adjustment.Condition when) {
        Canonical.Fields fields = Canonical.kind(kind).put("limit", figure(limit));
        return when instanceof Adjustment.Condition.Scored scored
                ? fields.put("measure", scored.measure()).put("word", scored.word())
                : fields;
    }

    private static Optional<Canonical> spread(Equation.Residual spread) {
        return spread instanceof Equation.Residual.Stated stated
                ? Optional.of(figure(stated.deviation()))
                : Optional.empty();
    }

    private static Canonical.Fields figure(Quantity figure) {
        return Canonical.fields()
                .put("amount", figure.amount())
                .putUnlessEmpty("unit", figure.unit().symbol());
    }

    private static Canonical expression(Expression expression) {
        if (expression instanceof Expression.Sum sum) {
            return Canonical.kind("sum").put("terms", Canonical.items(sum.terms(), PredictorWriter::expression));
        }
        if (expression instanceof Expression.Product product) {
            return Canonical.kind("product")
                    .put("factors", Canonical.items(product.factors(), PredictorWriter::expression));
        }
        if (expression instanceof Expression.Negative negative) {
            return Canonical.kind("negative").put("of", expression(negative.of()));
        }
        if (expression instanceof Expression.Inverse inverse) {
            return Canonical.kind("inverse").put("of", expression(inverse.of()));
        }
        return expression instanceof Expression.Named named
                ? Canonical.kind("named").put("name", named.name())
                : coefficient((Expression.Coefficient) expression);
    }

    private static Canonical coefficient(Expression.Coefficient coefficient) {
        return Canonical.kind("figure")
                .put("amount", coefficient.figure().amount())
                .putUnlessEmpty("unit", coefficient.figure().unit().symbol())
                .putUnlessEmpty("per", coefficient.per(), unit -> new Canonical.Words(unit.symbol()));
    }
}
