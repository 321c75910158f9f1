package dev.gambrel.references.item;

import dev.gambrel.references.source.Certainty;
import dev.gambrel.references.source.Citation;
import java.util.List;

/** Numbers of the Handbook of Australian Meat, as on charts of primal cuts that use them. Eye of rump is 2110 here and 2093 in UNECE. */
final class HandbookItems {
    private static final Citation CHARTS = new Citation(
            "Charts of primal cuts with numbers of the Handbook of Australian Meat",
            "edition not stated",
            Certainty.SEEN);

    static final List<Item> ITEMS = new ItemTable(Scheme.AUSTRALIAN_HANDBOOK)
            .of(Animal.BEEF, CHARTS, """
                    2000 | -   | Topside
                    2020 | -   | Silverside
                    2030 | -   | Outside
                    2040 | -   | Eye round
                    2050 | -   | Outside flat
                    2060 | -   | Thick flank
                    2070 | -   | Knuckle
                    2090 | -   | Rump
                    2100 | -   | D-rump
                    2110 | -   | Eye of rump
                    2120 | -   | Top sirloin
                    2140 | -   | Striploin (3 rib)
                    2142 | -   | Striploin (1 rib)
                    2150 | -   | Tenderloin (side strap on)
                    2210 | -   | Flank steak
                    2220 | -   | Rib set
                    2240 | -   | Cube roll (5 rib)
                    2244 | -   | Cube roll (8 rib)
                    2260 | -   | Chuck
                    2270 | -   | Chuck - square cut
                    2275 | -   | Chuck roll (5 rib)
                    2280 | -   | Neck
                    2300 | -   | Blade (clod)
                    2310 | -   | Chuck tender
                    2320 | -   | Brisket
                    2330 | -   | Brisket point end
                    2340 | -   | Brisket navel end
                    2350 | -   | Brisket point end (deckle off)
                    1552 | -   | Shortloin (1 rib)
                    1690 | -   | Short ribs (5 ribs)
                    """)
            .of(Animal.SHEEP, CHARTS, """
                    4800 | -   | Leg - chump on, shank on
                    4810 | -   | Leg - chump on, shank off
                    4820 | -   | Leg - chump off, shank on | which number belongs to which name is inferred from the layout of the chart
                    4830 | -   | Leg - chump off, shank off
                    4840 | -   | Loin - chump on
                    4860 | -   | Loin | which number belongs to which name is inferred from the layout of the chart
                    4880 | -   | Short loin
                    4930 | -   | Rack (7 rib)
                    4932 | -   | Rack (8 rib)
                    4938 | -   | Rack (frenched)
                    4990 | -   | Square cut shoulder
                    5010 | -   | Breast and flap
                    5020 | -   | Neck
                    5030 | -   | Foreshank
                    5050 | -   | Shoulder square cut, rolled/netted
                    5060 | out | Leg - boneless (chump on)
                    5065 | -   | Leg cuts | which number belongs to which name is inferred from the layout of the chart
                    5070 | out | Leg - chump off, shank off, boneless
                    5071 | -   | Silverside
                    5072 | -   | Knuckle
                    5073 | -   | Topside
                    5074 | -   | Rump | which number belongs to which name is inferred from the layout of the chart
                    5080 | -   | Tenderloin
                    5109 | -   | Backstrap
                    """)
            .of(Animal.PORK, CHARTS, """
                    4010 | -   | Leg
                    4012 | -   | Leg - ham trim
                    4029 | -   | Shoulder square cut
                    4049 | -   | Shoulder picnic
                    4059 | -   | Collar butt
                    4070 | -   | Middle
                    4080 | -   | Belly
                    4089 | -   | Rack
                    4099 | -   | Loin
                    4130 | -   | Rump
                    4161 | -   | Loin back ribs
                    4164 | -   | Riblets
                    4170 | -   | Shoulder hock (shank)
                    4172 | -   | Hock leg (shank)
                    4280 | -   | Tenderloin
                    4286 | -   | Leg set
                    4343 | -   | Loin - rolled
                    4360 | -   | Eye of short loin
                    4361 | -   | Eye of loin
                    """)
            .items();

    private HandbookItems() {}
}
