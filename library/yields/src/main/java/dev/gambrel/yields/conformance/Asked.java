package dev.gambrel.yields.conformance;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.inspection.PieceIndex;
import dev.gambrel.yields.conformance.clause.CutClauses;
import dev.gambrel.yields.conformance.clause.Stated;
import dev.gambrel.yields.conformance.number.WeightRanges;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** What a buyer asks for: each product with its own clauses, and then those further up that hold for it. */
final class Asked {
    /**
     * A product with the clauses that it is held against.
     *
     * @param offer its names
     * @param clauses in the order in which they are laid down; empty where it only holds others
     * @param isOnlyPath whether nothing is asked of it but of what lies in it
     */
    record Item(Offer offer, List<Stated> clauses, boolean isOnlyPath) {}

    private final Offers offers;
    private final Set<TreePath> holders = new HashSet<>();
    private final Set<Stated> taken = new HashSet<>();

    private Asked(CutTree buyer, PieceIndex pieces) {
        this.offers = Offers.of(buyer, pieces);
        offers.all().forEach(offer -> holders.add(offer.product().path().parent()));
    }

    static List<Item> items(CutTree buyer, PieceIndex pieces) {
        Asked asked = new Asked(buyer, pieces);
        List<Item> items = new ArrayList<>();
        List<Stated> ofCarcass = CutClauses.ofCarcass(buyer.carcass());
        if (!ofCarcass.isEmpty()) {
            items.add(new Item(asked.offers.carcass(), ofCarcass, false));
        }
        asked.offers.all().forEach(offer -> items.add(asked.item(offer)));
        return items;
    }

    /** What a cut says of how it is sold stands again at its portion or way, and is asked once. */
    private Item item(Offer offer) {
        List<Stated> clauses = new ArrayList<>();
        for (Stated stated : offer.own()) {
            if (taken.add(stated)) {
                clauses.add(stated);
                WeightRanges.limit(stated).ifPresent(clauses::add);
            }
        }
        boolean isCut = offer.product().kind() == Product.Kind.CUT;
        boolean isHolder = holders.contains(offer.product().path());
        if (isCut && (!clauses.isEmpty() || !isHolder)) {
            clauses.addAll(offer.inherited());
        }
        return new Item(offer, clauses, clauses.isEmpty() && (isHolder || !isCut));
    }
}
