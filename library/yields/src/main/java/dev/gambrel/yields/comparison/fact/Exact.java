package dev.gambrel.yields.comparison.fact;

import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.text.TradeName;
import java.math.BigDecimal;
import java.util.Collection;
import java.util.List;

/** The one writing of a value, the same for all that mean the same: 1 kg and 1000 g, "Leg" and "leg". */
final class Exact {
    private Exact() {}

    /** The exact amount in the unit of comparison. */
    static String of(Quantity quantity) {
        return number(quantity.common()) + " " + quantity.dimension();
    }

    static String number(BigDecimal number) {
        return number.stripTrailingZeros().toString();
    }

    static List<String> of(Expected expected) {
        if (expected instanceof Expected.PlusMinus spread) {
            return List.of(of(spread.value()), "±", of(spread.deviation()));
        }
        return expected instanceof Expected.CentralRange range
                ? List.of(of(range.low()), "to", of(range.high()))
                : List.of(of(((Expected.Mean) expected).value()));
    }

    static List<Quantity> quantities(Expected expected) {
        if (expected instanceof Expected.PlusMinus spread) {
            return List.of(spread.value(), spread.deviation());
        }
        return expected instanceof Expected.CentralRange range
                ? List.of(range.low(), range.high())
                : List.of(((Expected.Mean) expected).value());
    }

    /** Names whose order has no meaning. */
    static List<String> unordered(Collection<TradeName> names) {
        return names.stream().map(TradeName::key).sorted().toList();
    }

    static List<String> ordered(Collection<TradeName> names) {
        return names.stream().map(TradeName::key).toList();
    }
}
