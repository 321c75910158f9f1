package dev.gambrel.references.ranges;

import dev.gambrel.quantity.Unit;
import dev.gambrel.references.item.Scheme;
import dev.gambrel.references.source.Certainty;
import dev.gambrel.references.source.Citation;
import java.util.List;

/** IMPS series 100, beef, ranges A to D in pounds. */
final class ImpsBeefRanges {
    private static final Citation GUIDE_1997 = new Citation(
            "Buyers guide of a trade association, which prints the numbers of IMPS", "1997", Certainty.SEEN);
    private static final Citation REPRINT =
            new Citation("IMPS series 100 as reprinted for cooks", "edition not stated", Certainty.SEEN_QUOTED);
    private static final Citation BOTH = new Citation(
            "IMPS series 100 as reprinted for cooks, the same in a buyers guide of 1997",
            "edition not stated",
            Certainty.SEEN_QUOTED);
    private static final Citation QUOTED_2014 =
            new Citation("IMPS series 100 as quoted in a research note", "2014", Certainty.SEEN_QUOTED);
    private static final Citation MEMORY = new Citation("IMPS series 100", "edition not known", Certainty.FROM_MEMORY);

    static final List<RangeTable> TABLES = new RangeLines(Scheme.IMPS, Unit.POUND, List.of("A", "B", "C", "D"))
            .of(GUIDE_1997, """
                    100 | 500-600 600-700 700-800 800-up | Carcass
                    101 | 250-300 300-350 350-400 400-up | Side
                    102 | 131-157 157-183                | Forequarter | ranges C and D look misprinted where they were seen and are left out
                    103 | 24-28 28-33 33-38 38-up        | Rib, primal
                    112 | 5-6 6-8 8-10 10-up             | Rib, ribeye roll | a research note quotes the same ranges from the edition of 2014
                    """)
            .of(REPRINT, """
                    102A | 104-125 125-146 146-168 168-up | Forequarter, boneless
                    102B | 91-110 110-128 128-147 147-up  | Forequarter, streamlined, boneless
                    104  | 19-22 22-26 26-30 30-up        | Rib, oven-prepared, regular
                    107A | 17-19 19-23 23-26 26-up        | Rib, oven-prepared, blade bone in
                    108  | 13-16 16-19 19-22 22-up        | Rib, oven-prepared, boneless
                    109C | 13-15 15-18 18-21 21-up        | Rib, roast-ready, cover off
                    109E | 11-13 13-16 16-19 19-up        | Rib, ribeye roll, lip-on, bone in | another print has D from 20 lb
                    111  | 10-12 12-15 15-18 18-up        | Rib, Spencer roll
                    """)
            .of(BOTH, """
                    107  | 17-19 19-23 23-26 26-up | Rib, oven-prepared
                    109  | 14-16 16-19 19-22 22-up | Rib, roast-ready
                    109A | 14-16 16-19 19-22 22-up | Rib, roast-ready, special
                    109B | 3-up                    | Rib, blade meat
                    109D | 12-14 14-17 17-20 20-up | Rib, roast-ready, cover off, short-cut
                    110  | 11-13 13-16 16-19 19-up | Rib, roast-ready, boneless
                    """)
            .of(QUOTED_2014, """
                    118 | 12-14 14-17 17-20 20-up | Brisket | worked back from kilograms to whole pounds
                    175 | 11-14 14-18 18-22 22-up | Loin, strip loin, bone-in | worked back from kilograms to whole pounds
                    180 | 8-10 10-12 12-14 14-up  | Loin, strip loin, boneless | worked back from kilograms to whole pounds
                    """)
            .of(MEMORY, """
                    112A | 6-7 7-9 9-11 11-up        | Rib, ribeye roll, lip-on
                    113  | 66-79 79-93 93-106 106-up | Chuck, square-cut
                    114  | 13-15 15-18 18-21 21-up   | Chuck, shoulder clod
                    116A | 13-15 15-18 18-21 21-up   | Chuck, chuck roll
                    120  | 6-8 8-10 10-12 12-up      | Brisket, deckle-off, boneless
                    158  | 59-71 71-83 83-95 95-up   | Round, primal
                    160  | 47-57 57-67 67-76 76-up   | Round, shank off, partially boneless
                    164  | 40-48 48-56 56-64 64-up   | Round, rump and shank off
                    165  | 35-43 43-50 50-57 57-up   | Round, rump and shank off, boneless
                    167  | 8-9 9-11 11-13 13-up      | Round, knuckle
                    167A | 7-8 8-10 10-12 12-up      | Round, knuckle, peeled
                    168  | 14-17 17-20 20-23 23-up   | Round, top (inside), untrimmed
                    169  | 14-17 17-20 20-23 23-up   | Round, top (inside)
                    170  | 18-23 23-27 27-31 31-up   | Round, bottom (gooseneck)
                    170A | 17-20 20-24 24-28 28-up   | Round, bottom (gooseneck), heel out
                    171B | 8-10 10-13 13-16 16-up    | Round, outside round (flat)
                    171C | under-3 3-5 5-up          | Round, eye of round
                    172  | 30-37 37-45 45-52 52-up   | Loin, full loin, trimmed
                    184  | 7-9 9-12 12-14 14-up      | Loin, top sirloin butt, boneless | recalled with doubt
                    189  | 4-5 5-6 6-7 7-up          | Loin, tenderloin, full
                    189A | 3-4 4-5 5-6 6-up          | Loin, tenderloin, full, side muscle on, defatted
                    193  | under-1 1-2 2-up          | Flank, flank steak
                    """)
            .tables();

    private ImpsBeefRanges() {}
}
