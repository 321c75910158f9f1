package dev.gambrel.references.ranges;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.references.item.Scheme;
import dev.gambrel.references.source.Certainty;
import dev.gambrel.references.source.Citation;
import java.util.List;
import java.util.Optional;

/**
 * What lamb primals weigh by the weight of the carcass, in kilograms of the piece of one side. A guide and no limit, fat trimmed to at
 * most 10 mm.
 */
public final class AustralianGuide {
    private static final Citation CHART = new Citation(
            "Chart of lamb primal cuts with numbers of the Handbook of Australian Meat, marked a guide only",
            "edition not stated",
            Certainty.SEEN);
    private static final List<String> BANDS =
            List.of("carcass 18 to 20 kg", "carcass 20 to 24 kg", "carcass 24 to 28 kg");

    /** The bands of carcasses that the chart has. */
    public static final RangeTable CARCASSES = new RangeLines(Scheme.AUSTRALIAN_HANDBOOK, Unit.KILOGRAM, BANDS)
            .of(CHART, "carcass | 18-20 20-24 24-28 | Lamb carcass")
            .tables()
            .get(0);

    static final List<RangeTable> PIECES = new RangeLines(Scheme.AUSTRALIAN_HANDBOOK, Unit.KILOGRAM, BANDS)
            .of(CHART, """
                    4800 | 2.9-3.3 3.3-3.9 3.9-4.6  | Leg - chump on, tipped
                    4930 | 0.95-1.0 1.0-1.2 1.2-1.3 | Rack (7 rib) | the lightest band does not fit the share of the carcass printed beside it
                    4880 | 1.1-1.2 1.2-1.5 1.5-1.7  | Shortloin (1 rib)
                    4990 | 1.9-2.1 2.1-2.5 2.5-2.9  | Square cut shoulder (5 rib)
                    5020 | 0.6-0.7 0.7-0.8 0.8-0.9  | Neck (whole) | one whole neck
                    5030 | 0.5-0.6 0.6-0.7 0.7-0.8  | Foreshank
                    5010 | 1.1-1.2 1.2-1.5 1.5-1.7  | Breast/flap
                    """)
            .tables();

    private AustralianGuide() {}

    /**
     * What a piece weighs of a carcass.
     *
     * @param number the number of the cut, such as "4800"
     * @param carcass what the carcass weighs
     * @return the range of the band in which the carcass is; nothing where the chart has no such number or band
     */
    public static Optional<PieceRange> ofCarcass(String number, Quantity carcass) {
        return PIECES.stream()
                .filter(table -> table.number().equals(number))
                .filter(table -> CARCASSES.place(carcass) instanceof Placement.In)
                .findFirst()
                .flatMap(table -> table.range(
                        ((Placement.In) CARCASSES.place(carcass)).range().name()));
    }
}
