package dev.gambrel.json;

import dev.gambrel.json.located.Located;
import dev.gambrel.json.located.ObjectReader;
import dev.gambrel.json.located.Reading;
import dev.gambrel.json.located.Readings;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.estimate.Adjustment;
import dev.gambrel.tree.estimate.Equation;
import dev.gambrel.tree.estimate.Expression;
import dev.gambrel.tree.estimate.Measure;
import dev.gambrel.tree.estimate.Predictors;
import dev.gambrel.tree.estimate.Scale;
import dev.gambrel.tree.estimate.ValidRange;
import java.math.BigDecimal;
import java.util.Arrays;
import java.util.List;

/** Reads what is measured and what is estimated. A figure without a unit is a plain number. */
final class PredictorReader {
    private static final Reading<Unit> UNIT = Readings.word(
            Arrays.stream(Unit.values()).filter(unit -> unit != Unit.NUMBER).toList(), Unit::symbol);

    private static final Reading<Adjustment> ADJUSTMENT = new Readings.Kinds<Adjustment>()
            .or("at least", in -> new Adjustment.AtLeast(limit(in), condition(in)))
            .or("at most", in -> new Adjustment.AtMost(limit(in), condition(in)))
            .or("decimals dropped", in -> new Adjustment.DecimalsDropped());

    private static final Expression NOTHING_READ =
            new Expression.Coefficient(new Quantity(BigDecimal.ONE, Unit.NUMBER), List.of());

    private static final Reading<Expression> EXPRESSION = expression();

    private PredictorReader() {}

    static Predictors predictors(ObjectReader in) {
        return new Predictors(
                in.list("measures", Readings.object(PredictorReader::measure)),
                in.list("estimates", Readings.object(PredictorReader::equation)));
    }

    private static Measure measure(ObjectReader in) {
        return new Measure(
                DescriptionReader.name(in),
                scale(in),
                in.optional("where", "", Readings::text),
                in.optional("range", new ValidRange.NotStated(), Readings.object(PredictorReader::range)));
    }

    private static Scale scale(ObjectReader in) {
        return in.has("scores")
                ? new Scale.Scored(in.list("scores", Readings.object(PredictorReader::score)))
                : new Scale.In(in.optional("unit", Unit.NUMBER, UNIT));
    }

    private static Scale.Score score(ObjectReader in) {
        return new Scale.Score(
                in.need("word", "the score in words", Readings::name),
                in.need("number", "what it counts as", Readings::figure));
    }

    private static ValidRange.Stated range(ObjectReader in) {
        return new ValidRange.Stated(
                in.need("low", "a figure", Readings.object(PredictorReader::figure)),
                in.need("high", "a figure", Readings.object(PredictorReader::figure)));
    }

    private static Equation equation(ObjectReader in) {
        return new Equation(
                DescriptionReader.name(in),
                in.need("expression", "how it is worked out", EXPRESSION),
                in.has("unit") ? new Equation.Told.In(in.need("unit", "a unit", UNIT)) : new Equation.Told.NotStated(),
                in.list("for", Readings.object(PredictorReader::held)),
                in.list("adjustments", ADJUSTMENT),
                in.has("sd")
                        ? new Equation.Residual.Stated(
                                in.need("sd", "a figure", Readings.object(PredictorReader::figure)))
                        : new Equation.Residual.NotStated(),
                in.list("sources", Readings::name));
    }

    private static Equation.Held held(ObjectReader in) {
        return new Equation.Held(
                in.need("of", "a measure or a carcass weight", Readings::name),
                in.need("range", "the range that it holds for", Readings.object(PredictorReader::range)));
    }

    private static Quantity limit(ObjectReader in) {
        return in.need("limit", "a figure", Readings.object(PredictorReader::figure));
    }

    private static Quantity figure(ObjectReader in) {
        return new Quantity(in.need("amount", "a number", Readings::figure), in.optional("unit", Unit.NUMBER, UNIT));
    }

    private static Adjustment.Condition condition(ObjectReader in) {
        return in.has("measure") || in.has("word")
                ? new Adjustment.Condition.Scored(
                        in.need("measure", "the name of a measure", Readings::name),
                        in.need("word", "one of its scores", Readings::name))
                : new Adjustment.Condition.Always();
    }

    private static Reading<Expression> expression() {
        Readings.Kinds<Expression> kinds = new Readings.Kinds<>();
        return kinds.or("figure", in -> new Expression.Coefficient(figure(in), in.list("per", UNIT)))
                .or("named", in -> new Expression.Named(DescriptionReader.name(in)))
                .or("sum", in -> new Expression.Sum(expressions(in, "terms", kinds)))
                .or("product", in -> new Expression.Product(expressions(in, "factors", kinds)))
                .or("negative", in -> new Expression.Negative(in.need("of", "what is taken away", kinds)))
                .or("inverse", in -> new Expression.Inverse(in.need("of", "what is divided by", kinds)));
    }

    private static List<Expression> expressions(ObjectReader in, String field, Reading<Expression> each) {
        return in.need(field, "a list", (value, findings) -> {
            List<Expression> read = Readings.list(each).read(value, findings);
            if (value instanceof Located.Items list && list.items().isEmpty()) {
                findings.wrongType(value, "a list with something in it");
            }
            return read.isEmpty() ? List.of(NOTHING_READ) : read;
        });
    }
}
