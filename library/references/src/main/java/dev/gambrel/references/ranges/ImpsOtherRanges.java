package dev.gambrel.references.ranges;

import dev.gambrel.quantity.Unit;
import dev.gambrel.references.item.Scheme;
import dev.gambrel.references.source.Certainty;
import dev.gambrel.references.source.Citation;
import java.util.List;
import java.util.stream.Stream;

/** IMPS series 400, pork, ranges A to C in pounds; and portions, one suggested range in ounces. */
final class ImpsOtherRanges {
    private static final Citation QUOTED_2014 =
            new Citation("IMPS series 400 as quoted in a research note", "2014", Certainty.SEEN_QUOTED);
    private static final Citation OLDER =
            new Citation("IMPS series 400 as used in teaching, superseded", "before 1996", Certainty.SEEN_QUOTED);
    private static final Citation PORTIONS_2014 = new Citation(
            "IMPS series 1000 as quoted in a research note, suggested range of portions",
            "2014",
            Certainty.SEEN_QUOTED);

    private static final List<RangeTable> PORK = new RangeLines(Scheme.IMPS, Unit.POUND, List.of("A", "B", "C"))
            .of(QUOTED_2014, """
                    408  | 12-16 16-20 20-up | Belly
                    409  | 9-12 12-15 15-up  | Belly, skinless
                    410  | 14-18 18-24 24-up | Loin, bone-in | worked back from kilograms to whole pounds
                    412  | 6-8 8-11 11-up    | Loin, center-cut, 8 ribs, bone-in | worked back from kilograms to whole pounds
                    412B | 4-5 5-7 7-up      | Loin, center-cut, 8 ribs, boneless | worked back from kilograms to whole pounds
                    413  | 8-10 10-13 13-up  | Loin, boneless | worked back from kilograms to whole pounds
                    """)
            .of(OLDER, """
                    405  | 4-6 6-8 8-12      | Shoulder, picnic
                    410  | 10-14 14-17 17-20 | Loin
                    412  | 4-6 6-8 8-10      | Loin, center-cut
                    413A | 6-8 8-10 10-12    | Loin, boned and tied
                    """)
            .tables();

    private static final List<RangeTable> PORTIONS = new RangeLines(Scheme.IMPS, Unit.OUNCE, List.of("suggested"))
            .of(PORTIONS_2014, """
                    1112 | 4-12 | Ribeye steak, boneless
                    1180 | 6-20 | Strip loin steak, boneless
                    1184 | 4-24 | Top sirloin butt steak, boneless
                    1188 | 3-8  | Tenderloin steak | which figures belong to which of 1188 and 1189 is not clear in the note
                    1189 | 4-14 | Tenderloin steak, boneless | which figures belong to which of 1188 and 1189 is not clear in the note
                    """)
            .of(OLDER, """
                    1400 | 3-6 | Pork filet | suggested portions are 3, 4, 5 and 6 oz
                    """)
            .tables();

    static final List<RangeTable> TABLES =
            Stream.of(PORK, PORTIONS).flatMap(List::stream).toList();

    private ImpsOtherRanges() {}
}
