package dev.gambrel.references.item;

import dev.gambrel.references.source.Certainty;
import dev.gambrel.references.source.Citation;
import java.util.List;

/**
 * UNECE numbers of beef. Some definitions are those of the same numbers as printed with Australian cuts: 2011, 2012, 2014, 2040
 * and 2050.
 */
final class UneceBeef {
    private static final Citation EDITION_2007 =
            new Citation("UNECE Standard Bovine Meat, Carcases and Cuts", "2007", Certainty.SEEN_QUOTED);
    private static final Citation AMENDMENT_2012 = new Citation(
            "Amendments to the UNECE Standard Bovine Meat, ECE/TRADE/C/WP.7/2012/7", "2012", Certainty.SEEN);

    static final List<Item> ITEMS = new ItemTable(Scheme.UNECE)
            .of(Animal.BEEF, EDITION_2007, """
                    1000      | in  | Side
                    1001      | in  | Carcase
                    1010      | in  | Hindquarter
                    1020      | in  | Pistola
                    1050      | in  | Forequarter and flank (pistola forequarter)
                    1063      | in  | Forequarter
                    1500-1503 | in  | Butt
                    1502      | in  | Butt and rump
                    1510      | in  | Butt - shank-off
                    1520      | in  | Butt square cut
                    1525      | in  | Loin
                    1540      | in  | Rump and loin
                    1550      | in  | Shortloin
                    1597      | in  | Ribs
                    1599      | in  | Full Rib Set
                    1604      | in  | Ribs-prepared
                    1617      | in  | Chuck - square cut
                    1622      | in  | Chuck roll-long cut
                    1626      | in  | Shoulder and foreleg
                    1630      | in  | Neck
                    1643      | in  | Brisket
                    1650-1653 | in  | Brisket point end
                    1660-1665 | in  | Brisket navel end
                    1673      | in  | Brisket rib plate
                    1674      | in  | Brisket point (sternum)
                    1680      | in  | Forequarter / Hindquarter shin - shank
                    1694      | in  | Short ribs
                    1695      | in  | Spare ribs
                    2010      | out | Inside
                    2011      | out | Inside - cap off | gracilis removed; pectineus and sartorius may be
                    2012      | out | Inside cap | gracilis
                    2020      | out | Silverside
                    2030      | out | Outside
                    2033      | out | Outside meat
                    2035      | out | Inside meat
                    2040      | out | Eye round | semitendinosus
                    2050      | out | Outside flat | gluteobiceps, parted along the seam
                    2060      | out | Thick flank
                    2070      | out | Knuckle
                    2081      | out | Bottom sirloin butt
                    2090      | out | Rump
                    2091      | out | Rump cap
                    2093      | out | Eye of rump
                    2120      | out | Top sirloin (top butt)
                    2131      | out | Tri-tip
                    2133      | out | Bottom sirloin butt, ball tip
                    2140      | out | Striploin
                    2146      | out | Loin
                    2150      | out | Tenderloin
                    2160      | out | Tenderloin side strap off
                    2180      | out | Thick skirt (hanging tender)
                    2190      | out | Thin skirt (outside skirt)
                    2196      | out | Cutaneus trunci (rose)
                    2200      | out | Thin flank
                    2203      | out | Internal flank plate
                    2205      | out | Inside skirt
                    2210      | out | Flank steak
                    2229      | out | Rib eye cap meat
                    2230      | out | Spencer roll
                    2240      | out | Cube roll (rib eye roll)
                    2264      | out | Chuck eye
                    2268      | out | Chuck eye roll
                    2275      | out | Chuck roll
                    2278      | out | Chuck crest
                    2280      | out | Neck
                    2289      | out | Chuck roll - long cut
                    2300      | out | Blade (clod)
                    2302      | out | Blade bolar
                    2303      | out | Blade oyster
                    2304      | out | Blade undercut
                    2306      | out | Shoulder tender
                    2310      | out | Chuck tender
                    2323      | out | Brisket
                    2329      | out | Pectoral meat
                    2330-2333 | out | Brisket point end
                    2340-2345 | out | Brisket navel end
                    2353      | out | Brisket point end deckle off
                    2358      | out | Brisket deckle off
                    2360      | out | Shin - shank
                    2364      | out | Heel muscle
                    2473      | out | Brisket navel plate
                    2483      | out | Butt set
                    """)
            .of(Animal.BEEF, AMENDMENT_2012, """
                    2000 | out | Topside | parent item of 2011 and 2014
                    2014 | out | Inside - cap off, side muscles removed | gracilis, pectineus and sartorius removed
                    """)
            .items();

    private UneceBeef() {}
}
