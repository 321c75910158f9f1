package dev.gambrel.yields.conformance;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.yields.conformance.clause.Clause;
import dev.gambrel.yields.conformance.clause.Quality;
import dev.gambrel.yields.conformance.clause.Stated;
import java.util.List;
import org.junit.jupiter.api.Test;

/** What holds of a cut because it is laid down further up. */
class OfferTest {
    private static final Stated FARMED = carried(Quality.CLAIM, "farmed");
    private static final Stated FREE_RANGE = carried(Quality.CLAIM, "free range");
    private static final Stated LOT = carried(Quality.LABEL, "lot");
    private static final Stated SILVERSKIN = new Stated(
            new Clause.Tissue(TradeName.of("silverskin"), "removed"), new Place.InTree(TreePath.ROOT, Aspect.NAME));

    private static Stated carried(Quality quality, String name) {
        return new Stated(
                new Clause.Carried(quality, TradeName.of(name)), new Place.InTree(TreePath.ROOT, Aspect.SUPPLY));
    }

    private static Offer offer(Product.Kind kind, Offer above, Stated... own) {
        TreePath path = TreePath.ROOT.then(TradeName.of("leg"));
        return new Offer(0, new Product(kind, path), Names.only(TradeName.of("leg")), List.of(own), above);
    }

    private static final Offer CARCASS =
            new Offer(new Product(Product.Kind.CARCASS, TreePath.ROOT), List.of(FARMED, LOT));

    @Test
    void claims_and_labels_of_everything_hold_for_a_cut() {
        Offer cut = offer(Product.Kind.CUT, CARCASS);
        assertEquals(List.of(FARMED, LOT), cut.inherited());
        assertEquals(List.of(FARMED), cut.nearest(Quality.CLAIM));
    }

    @Test
    void what_a_cut_says_itself_takes_the_place_of_what_stands_further_up() {
        Offer cut = offer(Product.Kind.CUT, CARCASS, FREE_RANGE);
        assertEquals(List.of(LOT), cut.inherited());
        assertEquals(List.of(FREE_RANGE), cut.nearest(Quality.CLAIM));
    }

    @Test
    void trim_of_a_cut_does_not_hold_for_a_cut_of_it_and_does_for_its_portions_and_ways() {
        Offer cut = offer(Product.Kind.CUT, CARCASS, SILVERSKIN);
        assertEquals(List.of(), offer(Product.Kind.CUT, cut).held(Quality.TISSUE, clause -> true));
        assertEquals(List.of(SILVERSKIN), offer(Product.Kind.CUT, cut).beyond(Quality.TISSUE, clause -> true));
        assertEquals(List.of(SILVERSKIN), offer(Product.Kind.PORTION, cut).held(Quality.TISSUE, clause -> true));
        assertEquals(List.of(SILVERSKIN), offer(Product.Kind.WAY, cut).held(Quality.TISSUE, clause -> true));
    }
}
