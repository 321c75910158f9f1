package dev.gambrel.json.writing;

import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.WeightBand;
import dev.gambrel.tree.anatomy.AnatomicalCount;
import dev.gambrel.tree.anatomy.PieceCount;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.tree.portion.Measure;
import java.util.Optional;

/** Writes figures: quantities, expectations, shares, ranges and counts. */
final class FigureWriter {
    private FigureWriter() {}

    static Canonical.Fields quantity(String field, Quantity quantity) {
        return Canonical.fields()
                .put(field, quantity.amount())
                .put("unit", quantity.unit().symbol());
    }

    /** Two quantities; the second names its unit only where that is another one. */
    private static Canonical.Fields pair(String firstField, Quantity first, String secondField, Quantity second) {
        Canonical.Fields pair = Canonical.fields()
                .put(firstField, first.amount())
                .put(secondField, second.amount())
                .put("unit", first.unit().symbol());
        return first.unit() == second.unit()
                ? pair
                : pair.put(secondField + "Unit", second.unit().symbol());
    }

    static Canonical.Fields expected(Expected expected) {
        if (expected instanceof Expected.Mean mean) {
            return quantity("mean", mean.value());
        }
        if (expected instanceof Expected.PlusMinus spread) {
            return pair("mean", spread.value(), "sd", spread.deviation());
        }
        Expected.CentralRange range = (Expected.CentralRange) expected;
        return pair("low", range.low(), "high", range.high());
    }

    static Optional<Canonical> share(Share share) {
        if (share instanceof Share.Stated stated) {
            return Optional.of(expected(stated.expected())
                    .putUnlessEmpty("sources", stated.sources())
                    .putUnlessEmpty("others", stated.others(), FigureWriter::derived));
        }
        return share instanceof Share.Estimated estimated
                ? Optional.of(Canonical.fields().put("estimate", estimated.equation()))
                : Optional.empty();
    }

    private static Canonical derived(Share.Derived derived) {
        return expected(derived.expected()).put("of", derived.of());
    }

    static Optional<Canonical> band(WeightBand band) {
        return band instanceof WeightBand.Stated stated
                ? Optional.of(pair("low", stated.low(), "high", stated.high()))
                : Optional.empty();
    }

    static Optional<Canonical> limit(Limit limit) {
        if (limit instanceof Limit.Between between) {
            return Optional.of(pair("low", between.low(), "high", between.high()));
        }
        if (limit instanceof Limit.AtLeast least) {
            return Optional.of(quantity("atLeast", least.low()));
        }
        return limit instanceof Limit.AtMost most ? Optional.of(quantity("atMost", most.high())) : Optional.empty();
    }

    static Optional<Canonical> measure(Measure measure) {
        return measure instanceof Measure.Stated stated
                ? Optional.of(quantity("amount", stated.value()))
                : Optional.empty();
    }

    static Optional<Canonical> pieces(PieceCount pieces) {
        return pieces == PieceCount.NOT_STATED ? Optional.empty() : Optional.of(Canonical.count(pieces.perCarcass(1)));
    }

    static Canonical count(AnatomicalCount count) {
        return Canonical.fields()
                .put("least", count.least())
                .put("most", count.most())
                .putUnlessEmpty("sources", count.sources());
    }
}
