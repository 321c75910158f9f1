package dev.gambrel.tree.rules.estimate;

import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.estimate.Expression.Coefficient;
import dev.gambrel.tree.estimate.Measure;
import dev.gambrel.tree.estimate.Scale;
import dev.gambrel.tree.estimate.ValidRange;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.DoubleSummaryStatistics;
import java.util.stream.DoubleStream;

/** Between what a figure lies, in the units in which dimensions are compared; NaN where that is not known. */
record Bounds(double low, double high) {
    static final Bounds UNKNOWN = new Bounds(Double.NaN, Double.NaN);

    static Bounds exactly(double value) {
        return new Bounds(value, value);
    }

    static Bounds of(Coefficient coefficient) {
        double value = coefficient.figure().value();
        for (Unit unit : coefficient.per()) {
            value /= unit.factor().doubleValue();
        }
        return exactly(value);
    }

    static Bounds of(Measure measure) {
        if (measure.range() instanceof ValidRange.Stated stated) {
            return new Bounds(stated.low().value(), stated.high().value());
        }
        if (measure.scale() instanceof Scale.Scored scored && !scored.scores().isEmpty()) {
            return around(scored.scores().stream()
                    .map(Scale.Score::number)
                    .mapToDouble(BigDecimal::doubleValue)
                    .toArray());
        }
        return UNKNOWN;
    }

    private static Bounds around(double... values) {
        DoubleSummaryStatistics all = DoubleStream.of(values).summaryStatistics();
        return new Bounds(all.getMin(), all.getMax());
    }

    boolean isKnown() {
        return Double.isFinite(low) && Double.isFinite(high);
    }

    boolean holdsNothing() {
        return low <= 0 && high >= 0;
    }

    Bounds plus(Bounds other) {
        return new Bounds(low + other.low, high + other.high);
    }

    Bounds negative() {
        return new Bounds(-high, -low);
    }

    Bounds times(Bounds other) {
        boolean known = isKnown() && other.isKnown();
        return known ? around(low * other.low, low * other.high, high * other.low, high * other.high) : UNKNOWN;
    }

    Bounds inverse() {
        return isKnown() ? new Bounds(1 / high, 1 / low) : UNKNOWN;
    }

    String lowInWords() {
        return inWords(low);
    }

    String highInWords() {
        return inWords(high);
    }

    private static String inWords(double value) {
        return new BigDecimal(value)
                .round(new MathContext(6))
                .stripTrailingZeros()
                .toPlainString();
    }
}
