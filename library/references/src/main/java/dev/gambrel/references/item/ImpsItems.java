package dev.gambrel.references.item;

import dev.gambrel.references.source.Certainty;
import dev.gambrel.references.source.Citation;
import java.util.List;

/** IMPS numbers. Names that do not say the bone state are held without one, also where the trade knows it. */
final class ImpsItems {
    private static final Citation QUOTED_2014 =
            new Citation("IMPS, series 100, 400 and 1000, as quoted in a research note", "2014", Certainty.SEEN_QUOTED);
    private static final Citation GUIDE_1997 = new Citation(
            "Buyers guide of a trade association, which prints the numbers of IMPS", "1997", Certainty.SEEN);
    private static final Citation REPRINT =
            new Citation("IMPS series 100 as reprinted for cooks", "edition not stated", Certainty.SEEN_QUOTED);
    private static final Citation MEMORY_BEEF =
            new Citation("IMPS series 100", "edition not known", Certainty.FROM_MEMORY);
    private static final Citation COURSE = new Citation(
            "US Army Medical Department course MD0710, Red Meats, item descriptions of IMPS",
            "edition not stated",
            Certainty.SEEN_QUOTED);
    private static final Citation OLDER_PORK =
            new Citation("IMPS series 400 as used in teaching, superseded", "before 1996", Certainty.SEEN_QUOTED);
    private static final Citation CANADA = new Citation(
            "Canadian Food Inspection Agency, Wholesale Meat Specifications Document, same numbers as IMPS",
            "edition not stated",
            Certainty.SEEN);
    private static final Citation MARKET_2018 =
            new Citation("USDA Market News, lamb report, item names of IMPS series 200", "2018", Certainty.SEEN);
    private static final Citation MEMORY_LAMB =
            new Citation("IMPS series 200", "edition not known", Certainty.FROM_MEMORY);

    static final List<Item> ITEMS = new ItemTable(Scheme.IMPS)
            .of(Animal.BEEF, GUIDE_1997, """
                    100 | -   | Carcass
                    101 | -   | Side
                    102 | -   | Forequarter
                    103 | -   | Rib, primal
                    112 | -   | Rib, ribeye roll
                    """)
            .of(Animal.BEEF, REPRINT, """
                    102A | out | Forequarter, boneless
                    102B | out | Forequarter, streamlined, boneless
                    104  | -   | Rib, oven-prepared, regular
                    107  | -   | Rib, oven-prepared
                    107A | in  | Rib, oven-prepared, blade bone in
                    108  | out | Rib, oven-prepared, boneless
                    109  | -   | Rib, roast-ready
                    109A | -   | Rib, roast-ready, special
                    109B | -   | Rib, blade meat
                    109C | -   | Rib, roast-ready, cover off
                    109D | -   | Rib, roast-ready, cover off, short-cut
                    109E | in  | Rib, ribeye roll, lip-on, bone in
                    110  | out | Rib, roast-ready, boneless
                    111  | -   | Rib, Spencer roll
                    """)
            .of(Animal.BEEF, QUOTED_2014, """
                    118  | -   | Brisket
                    175  | in  | Loin, strip loin, bone-in
                    180  | out | Loin, strip loin, boneless
                    1112 | out | Ribeye steak, boneless
                    1180 | out | Strip loin steak, boneless
                    1184 | out | Top sirloin butt steak, boneless
                    1188 | -   | Tenderloin steak
                    1189 | out | Tenderloin steak, boneless
                    """)
            .of(Animal.BEEF, MEMORY_BEEF, """
                    112A | -   | Rib, ribeye roll, lip-on
                    113  | -   | Chuck, square-cut
                    114  | -   | Chuck, shoulder clod
                    116A | -   | Chuck, chuck roll
                    120  | out | Brisket, deckle-off, boneless
                    158  | -   | Round, primal
                    160  | -   | Round, shank off, partially boneless
                    164  | -   | Round, rump and shank off
                    165  | out | Round, rump and shank off, boneless
                    167A | -   | Round, knuckle, peeled
                    168  | -   | Round, top (inside), untrimmed
                    169  | -   | Round, top (inside)
                    170  | -   | Round, bottom (gooseneck)
                    170A | -   | Round, bottom (gooseneck), heel out
                    171B | -   | Round, outside round (flat)
                    171C | -   | Round, eye of round
                    189  | -   | Loin, tenderloin, full
                    193  | -   | Flank, flank steak
                    """)
            .of(Animal.BEEF, COURSE, """
                    167  | out | Round, knuckle | vastus and rectus femoris, with tensor fasciae latae
                    172  | -   | Loin, full loin, trimmed | short loin and sirloin, with the 13th rib
                    173  | -   | Loin, short loin | longissimus and psoas group, with the 13th rib; the sirloin cut off before the hip cartilage
                    184  | out | Loin, top sirloin butt, boneless | gluteus group and biceps femoris; bones, cartilage, tenderloin and ligament removed
                    189A | -   | Loin, tenderloin, full, side muscle on, defatted | psoas major, psoas minor and iliacus, practically free of surface fat
                    191  | -   | Loin, tenderloin, butt | psoas major, psoas minor and iliacus, cut at most 0.5 in before the iliacus; surface fat at most 0.75 in
                    """)
            .of(Animal.PORK, OLDER_PORK, """
                    1400 | -   | Pork filet
                    405  | -   | Shoulder, picnic | part of the blade stays in
                    410  | -   | Loin | at least 2 sacral vertebrae and no caudal ones
                    412  | -   | Loin, center-cut
                    413A | out | Loin, boned and tied
                    """)
            .of(Animal.PORK, QUOTED_2014, """
                    408  | -   | Belly
                    409  | -   | Belly, skinless
                    410  | in  | Loin, bone-in
                    412  | in  | Loin, center-cut, 8 ribs, bone-in
                    412B | out | Loin, center-cut, 8 ribs, boneless
                    413  | out | Loin, boneless
                    """)
            .of(Animal.PORK, CANADA, """
                    401 | -   | Leg | cut off at least 1.5 in before the aitch bone; foot off at or a little above the hock
                    """)
            .of(Animal.SHEEP, MARKET_2018, """
                    200A | -   | Carcass, 3-way
                    202  | -   | Foresaddle
                    203  | -   | Bracelet
                    204  | -   | Rack, 8-rib
                    204A | -   | Rack, chined
                    204B | -   | Rack, roast-ready
                    204C | -   | Rack, roast-ready, frenched
                    204D | -   | Rack, roast-ready, special
                    206  | -   | Shoulders
                    207  | -   | Shoulders, square-cut
                    208  | out | Shoulders, square-cut, boneless
                    209  | -   | Breast
                    209A | -   | Ribs, breast bones off
                    210  | -   | Foreshank
                    229  | -   | Hindsaddle, long-cut
                    230  | -   | Hindsaddle
                    231  | -   | Loins
                    232  | -   | Loins, trimmed
                    232A | -   | Loins, short-cut
                    232C | out | Loin, boneless, tied
                    """)
            .of(Animal.SHEEP, MEMORY_LAMB, """
                    233A | -   | Leg, trotter-off
                    234  | out | Leg, boneless
                    """)
            .of(Animal.VEAL, CANADA, """
                    300  | -   | Carcass | unsplit; at most two tail vertebrae
                    303  | -   | Side | split through the vertebral column, cord groove exposed over at least 75 % of the length
                    304  | -   | Foresaddle, 11 ribs | cut between ribs 11 and 12
                    304A | -   | Forequarter, 11 ribs | half of 304
                    304B | -   | Full front | cut between ribs 4 and 5 (option: 5 and 6)
                    306  | -   | Rack, 7 ribs | ribs 5 to 11
                    """)
            .of(Animal.VEAL, GUIDE_1997, """
                    309D | out | Chuck, square-cut, 4 ribs, neck off, boneless
                    """)
            .items();

    private ImpsItems() {}
}
