package dev.gambrel.json;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.json.located.Findings;
import dev.gambrel.json.located.JsonCode;
import dev.gambrel.json.located.Located;
import dev.gambrel.json.located.ObjectReader;
import dev.gambrel.json.located.Reading;
import dev.gambrel.json.located.Readings;
import dev.gambrel.json.located.Shown;
import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.WeightBand;
import dev.gambrel.tree.anatomy.AnatomicalCount;
import dev.gambrel.tree.anatomy.PieceCount;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.tree.portion.Measure;
import java.util.Arrays;
import java.util.function.BiFunction;

/** Reads figures: quantities, expectations, shares, ranges and counts. */
final class FigureReader {
    private FigureReader() {}

    static Quantity quantity(ObjectReader in, String field, Dimension dimension) {
        return new Quantity(in.need(field, "a number", Readings::figure), unit(in, dimension));
    }

    private static Unit unit(ObjectReader in, Dimension dimension) {
        return in.need("unit", "one of the units " + dimension.unitSymbols(), unitOf(dimension));
    }

    /** Two quantities; the second has a unit of its own only if that is written. */
    private static <T> T pair(
            ObjectReader in,
            String firstField,
            String secondField,
            Dimension dimension,
            BiFunction<Quantity, Quantity, T> made) {
        Quantity first = quantity(in, firstField, dimension);
        Unit secondUnit = in.optional(secondField + "Unit", first.unit(), unitOf(dimension));
        return made.apply(first, new Quantity(in.need(secondField, "a number", Readings::figure), secondUnit));
    }

    static Expected expected(ObjectReader in, Dimension dimension) {
        if (in.has("low") || in.has("high")) {
            return pair(in, "low", "high", dimension, Expected.CentralRange::new);
        }
        return in.has("sd")
                ? pair(in, "mean", "sd", dimension, Expected.PlusMinus::new)
                : new Expected.Mean(quantity(in, "mean", dimension));
    }

    static Reading<Expected> expected(Dimension dimension) {
        return Readings.object(in -> expected(in, dimension));
    }

    static Share share(ObjectReader in) {
        return in.optional("share", new Share.NotStated(), Readings.object(FigureReader::stated));
    }

    private static Share stated(ObjectReader in) {
        if (in.has("estimate")) {
            return new Share.Estimated(in.need("estimate", "the name of an estimate", Readings::name));
        }
        return new Share.Stated(
                expected(in, Dimension.SHARE),
                in.list("others", Readings.object(FigureReader::derived)),
                in.list("sources", Readings::name));
    }

    private static Share.Derived derived(ObjectReader in) {
        return new Share.Derived(
                expected(in, Dimension.SHARE), in.need("of", "\"carcass\" or the name of a cut", Readings::name));
    }

    static WeightBand band(ObjectReader in) {
        return pair(in, "low", "high", Dimension.WEIGHT, WeightBand.Stated::new);
    }

    static Limit limit(ObjectReader in, String field, Dimension dimension) {
        return in.optional(field, new Limit.NotStated(), Readings.object(limit -> limit(limit, dimension)));
    }

    static Reading<Limit> limit(Dimension dimension) {
        return Readings.object(in -> limit(in, dimension));
    }

    private static Limit limit(ObjectReader in, Dimension dimension) {
        if (in.has("atLeast")) {
            return new Limit.AtLeast(quantity(in, "atLeast", dimension));
        }
        return in.has("atMost")
                ? new Limit.AtMost(quantity(in, "atMost", dimension))
                : pair(in, "low", "high", dimension, Limit.Between::new);
    }

    static Measure measure(ObjectReader in, String field, Dimension dimension) {
        return in.optional(
                field,
                new Measure.NotStated(),
                Readings.object(amount -> new Measure.Stated(quantity(amount, "amount", dimension))));
    }

    static PieceCount pieces(ObjectReader in) {
        return in.optional("pieces", PieceCount.NOT_STATED, FigureReader::pieces);
    }

    private static PieceCount pieces(Located value, Findings findings) {
        if (value instanceof Located.Figure figure) {
            if (figure.digits().equals("1")) {
                return PieceCount.ONE;
            }
            if (figure.digits().equals("2")) {
                return PieceCount.TWO;
            }
        }
        String found = value instanceof Located.Figure figure ? Shown.of(figure.digits()) : value.words();
        findings.add(findings.at(JsonCode.WRONG_TYPE, value.pointer(), value.span())
                .with("found", found)
                .with("allowed", "1 or 2, the number to a carcass"));
        return PieceCount.NOT_STATED;
    }

    static AnatomicalCount count(ObjectReader in) {
        return new AnatomicalCount(
                in.need("least", "a whole number", Readings::count),
                in.need("most", "a whole number", Readings::count),
                in.list("sources", Readings::name));
    }

    private static Reading<Unit> unitOf(Dimension dimension) {
        return (value, findings) -> {
            String written = Readings.text(value, findings);
            Unit standIn = anyOf(dimension);
            if (!(value instanceof Located.Text)) {
                return standIn;
            }
            return Arrays.stream(Unit.values())
                    .filter(unit -> unit.symbol().equals(written))
                    .findFirst()
                    .map(unit -> fitting(unit, dimension, value, findings))
                    .orElseGet(() -> {
                        findings.add(unknown(written, dimension, value, findings));
                        return standIn;
                    });
        };
    }

    private static Unit anyOf(Dimension dimension) {
        return Arrays.stream(Unit.values())
                .filter(unit -> unit.dimension() == dimension)
                .findFirst()
                .orElseThrow();
    }

    private static Unit fitting(Unit unit, Dimension dimension, Located value, Findings findings) {
        if (unit.dimension() == dimension) {
            return unit;
        }
        findings.add(findings.at(JsonCode.WRONG_DIMENSION, value.pointer(), value.span())
                .with("found", unit.dimension().words())
                .with("unit", unit.symbol())
                .with("wanted", dimension.words())
                .with("allowed", dimension.unitSymbols()));
        return anyOf(dimension);
    }

    private static Diagnostic unknown(String written, Dimension dimension, Located value, Findings findings) {
        Diagnostic finding = findings.at(JsonCode.UNKNOWN_UNIT, value.pointer(), value.span())
                .with("found", Shown.of(written))
                .with("allowed", dimension.unitSymbols());
        return Unit.of(written)
                .map(unit -> finding.help("Write \"" + unit.symbol() + "\"."))
                .orElse(finding);
    }
}
