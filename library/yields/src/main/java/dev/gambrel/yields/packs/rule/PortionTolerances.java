package dev.gambrel.yields.packs.rule;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import java.util.List;
import java.util.stream.Stream;

/**
 * How far a portion may stray from what is ordered, by the Institutional Meat Purchase Specifications of the United States
 * Department of Agriculture, unless the purchaser says otherwise.
 */
public final class PortionTolerances {
    private static final String EDITION = "November 2014";
    private static final Citation BY_WEIGHT = quoted("section 3.5.1, portion weight");
    private static final Citation BY_THICKNESS = quoted("sections 3.5.1 and 3.6, portion thickness");

    /** Either way from the portion weight ordered, in ounces. */
    public static final ToleranceTable WEIGHT = new ToleranceTable(
            "the portion weights of IMPS",
            units(Dimension.WEIGHT),
            Quantity.of("0.01", Unit.OUNCE),
            List.of(
                    ounces(new ToleranceRow.End.Before(Quantity.of("6.00", Unit.OUNCE)), "0.25"),
                    ounces(new ToleranceRow.End.At(Quantity.of("12.00", Unit.OUNCE)), "0.5"),
                    ounces(new ToleranceRow.End.At(Quantity.of("24.00", Unit.OUNCE)), "0.75"),
                    ounces(new ToleranceRow.End.Open(), "1.0")));

    /** Either way from the thickness ordered, in inches: three sixteenths up to 1 inch, then a quarter. */
    public static final ToleranceTable THICKNESS = new ToleranceTable(
            "the portion thicknesses of IMPS",
            units(Dimension.LENGTH),
            Quantity.of("0.01", Unit.INCH),
            List.of(
                    inches(new ToleranceRow.End.At(Quantity.of("1.0", Unit.INCH)), "0.1875"),
                    inches(new ToleranceRow.End.Open(), "0.25")));

    private PortionTolerances() {}

    private static ToleranceRow ounces(ToleranceRow.End end, String amount) {
        return new ToleranceRow(end, new Allowed.Fixed(Quantity.of(amount, Unit.OUNCE)), BY_WEIGHT);
    }

    private static ToleranceRow inches(ToleranceRow.End end, String amount) {
        return new ToleranceRow(end, new Allowed.Fixed(Quantity.of(amount, Unit.INCH)), BY_THICKNESS);
    }

    private static List<Unit> units(Dimension dimension) {
        return Stream.of(Unit.values())
                .filter(unit -> unit.dimension() == dimension)
                .toList();
    }

    private static Citation quoted(String place) {
        return new Citation("IMPS 100 and 400, " + place, EDITION, Certainty.SEEN_QUOTED);
    }
}
