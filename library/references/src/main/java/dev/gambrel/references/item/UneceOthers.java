package dev.gambrel.references.item;

import dev.gambrel.references.source.Certainty;
import dev.gambrel.references.source.Citation;
import java.util.List;

/** UNECE numbers of veal, sheep, llama and alpaca, as far as they were found: the veal and sheep lists are those of drafts. */
final class UneceOthers {
    private static final Citation VEAL = new Citation(
            "Proposal for a UNECE standard for veal, informal document 4", "2009 proposal", Certainty.SEEN_IN_DRAFT);
    private static final Citation SHEEP = new Citation(
            "Draft UN/ECE standard for ovine meat, TRADE/WP.7/GE.11/2001/7", "2001 draft", Certainty.SEEN_IN_DRAFT);
    private static final Citation CAMELIDS =
            new Citation("UNECE Standard Llama/Alpaca Meat, ECE/TRADE/368", "2006", Certainty.SEEN);

    private static final String CAMELID_CUTS = """
            0010 | in  | Carcase
            0011 | in  | Side
            0040 | in  | Neck
            0020 | in  | Forequarter
            0030 | in  | Hindquarter
            0090 | in  | Ribs
            0081 | in  | Chop
            0051 | in  | Palet chop
            0061 | in  | Palet chop
            0041 | in  | Neck chop
            0173 | out | Inside
            0176 | out | Outside
            0177 | out | Outside flat
            0172 | out | Eye round
            0175 | out | Knuckle
            0178 | out | Rump (tail off)
            0171 | out | Eye of rump
            0181 | out | Striploin
            0182 | out | Tenderloin
            0131 | out | Thin flank
            0121 | out | Blade
            0122 | out | Bolar blade
            0125 | out | Cube roll
            0124 | out | Chuck tender
            0123 | out | Brisket point
            0152 | out | Shin/shank
            0162 | out | Shin/shank
            """;

    static final List<Item> ITEMS = new ItemTable(Scheme.UNECE)
            .of(Animal.VEAL, VEAL, """
                    3500      | in  | Carcase
                    3505      | in  | Side
                    3506      | in  | Side (brisket removed)
                    3507      | in  | Side (brisket and shin removed)
                    3510-3513 | in  | Forequarter
                    3530-3533 | in  | Hindquarter
                    3535-3538 | in  | Hindquarter, shank off
                    3560      | in  | Butt and rump
                    3565      | in  | Butt
                    3575-3578 | in  | Loin
                    3581-3582 | in  | Rack
                    3583-3584 | in  | Rack, cap off (frenched)
                    3590-3593 | in  | Shortloin
                    3605-3609 | in  | Ribs prepared
                    3615      | in  | Shoulder (blade)
                    3630      | in  | Shin-shank
                    3645      | in  | Brisket and shin
                    3650-3653 | in  | Brisket point end
                    3665-3669 | in  | Short ribs
                    3670      | in  | Spare ribs
                    """)
            .of(Animal.SHEEP, SHEEP, """
                    4500 | in  | Lamb carcase
                    4600 | in  | Mutton carcase
                    4620 | in  | Hogget carcase
                    4621 | in  | Ram carcase
                    """)
            .of(Animal.LLAMA, CAMELIDS, CAMELID_CUTS)
            .of(Animal.ALPACA, CAMELIDS, CAMELID_CUTS)
            .items();

    private UneceOthers() {}
}
