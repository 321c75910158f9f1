package dev.gambrel.yields.batch;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.estimate.Equation;
import dev.gambrel.tree.estimate.Measure;
import dev.gambrel.tree.estimate.Scale;
import dev.gambrel.tree.estimate.ValidRange;
import dev.gambrel.tree.inspection.EquationOrder;
import dev.gambrel.tree.inspection.Vocabulary;
import dev.gambrel.tree.inspection.Vocabulary.Meaning;
import dev.gambrel.yields.estimate.Measurements;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/**
 * The columns of readings of a batch, and what a reading may be.
 *
 * @param names measures in the order declared, then carcass weights on other bases that an equation names
 * @param units the unit of comparison of each
 * @param possible the readings that are of the right kind; any other is for the exact way to judge
 */
record Readings(List<TradeName> names, List<Unit> units, List<Range> possible) {
    private static final Range ANY = new Range(-Double.MAX_VALUE, Double.MAX_VALUE);
    private static final Range FROM_NOTHING = new Range(0, Double.MAX_VALUE);
    private static final Range OVER_NOTHING = new Range(Double.MIN_VALUE, Double.MAX_VALUE);

    static Readings of(CutTree tree, Basis weighed) {
        Readings readings = new Readings(new ArrayList<>(), new ArrayList<>(), new ArrayList<>());
        for (Measure measure : tree.carcass().predictors().measures()) {
            readings.add(measure.name(), common(measure.scale()), possible(measure.scale()));
        }
        for (Equation equation : tree.carcass().predictors().equations()) {
            List<TradeName> named = new ArrayList<>(EquationOrder.names(equation));
            equation.held().forEach(held -> named.add(held.of()));
            for (TradeName name : named) {
                Vocabulary.weight(name)
                        .filter(basis -> basis != weighed)
                        .map(Readings::name)
                        .filter(other -> !readings.names.contains(other))
                        .ifPresent(other -> readings.add(other, Unit.KILOGRAM, OVER_NOTHING));
            }
        }
        return readings;
    }

    private void add(TradeName name, Unit unit, Range range) {
        names.add(name);
        units.add(unit);
        possible.add(range);
    }

    /** "hot carcass weight" and "warm weight" are one. */
    static TradeName plain(TradeName name) {
        return Vocabulary.weight(name).map(Readings::name).orElse(name);
    }

    private static TradeName name(Basis basis) {
        return TradeName.of(basis.words() + " weight");
    }

    private static Unit common(Scale scale) {
        return Arrays.stream(Unit.values())
                .filter(unit -> unit.dimension() == scale.dimension())
                .findFirst()
                .orElseThrow();
    }

    private static Range possible(Scale scale) {
        if (scale instanceof Scale.Scored scored) {
            double[] numbers = scored.scores().stream()
                    .mapToDouble(score -> score.number().doubleValue())
                    .sorted()
                    .toArray();
            return numbers.length == 0
                    ? Range.of(0, false, 0, false)
                    : new Range(numbers[0], numbers[numbers.length - 1]);
        }
        return switch (scale.dimension()) {
            case NUMBER, SHARE, TEMPERATURE -> ANY;
            default -> FROM_NOTHING;
        };
    }

    /** The range of a measure that is needed, where one is stated. */
    static List<Range> stated(Vocabulary vocabulary, TradeName name) {
        return vocabulary.meaning(name).orElse(null) instanceof Meaning.Measured measured
                        && measured.measure().range() instanceof ValidRange.Stated range
                ? List.of(Range.of(range))
                : List.of();
    }

    /** What was read on one carcass, as the shortest decimals that stand for the doubles. */
    Measurements of(Carcasses carcasses, int carcass) {
        Measurements given = Measurements.NONE;
        for (int k = 0; k < names.size(); k++) {
            double value = carcasses.reading(k, carcass);
            if (Double.isFinite(value)) {
                given = given.with(names.get(k), inUnit(value, units.get(k)));
            }
        }
        return given;
    }

    private static Quantity inUnit(double common, Unit unit) {
        BigDecimal amount = BigDecimal.valueOf(common);
        return unit == Unit.CELSIUS
                ? Quantity.rounded(amount.divide(unit.factor(), MathContext.DECIMAL128), unit)
                : new Quantity(amount, unit);
    }
}
