package dev.gambrel.yields.conformance;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.Stream;
import dev.gambrel.tree.Way;
import dev.gambrel.tree.choice.Choice;
import dev.gambrel.tree.inspection.PieceIndex;
import dev.gambrel.tree.portion.Aim;
import dev.gambrel.yields.conformance.clause.CutClauses;
import dev.gambrel.yields.conformance.clause.Stated;
import dev.gambrel.yields.conformance.clause.SupplyClauses;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/** All that a tree has to offer: its cuts, ways, portions and streams. Made in one walk, O(nodes). */
final class Offers {
    private final PieceIndex pieces;
    private final Offer carcass;
    private final List<Offer> all = new ArrayList<>();
    private final Map<Integer, Integer> ends = new HashMap<>();

    private Offers(CutTree tree, PieceIndex pieces) {
        this.pieces = pieces;
        List<Stated> own = new ArrayList<>(CutClauses.ofCarcass(tree.carcass()));
        own.addAll(SupplyClauses.of(tree.terms(), TreePath.ROOT));
        this.carcass = new Offer(new Product(Product.Kind.CARCASS, TreePath.ROOT), own);
    }

    /** What stands in a tree; pieces are those of a species, which need not be the tree's own. */
    static Offers of(CutTree tree, PieceIndex pieces) {
        Offers offers = new Offers(tree, pieces);
        offers.parts(tree.parts(), TreePath.ROOT, offers.carcass);
        for (int i = 0; i < tree.streams().size(); i++) {
            offers.stream(tree.streams().get(i), i);
        }
        return offers;
    }

    /** The carcass, with what is laid down for everything. */
    Offer carcass() {
        return carcass;
    }

    /** Cuts, ways and portions from the carcass down, then streams. */
    List<Offer> all() {
        return all;
    }

    /** All that lies in an offer, itself included. */
    Within within(Offer offer) {
        return new Within(offer.order(), ends.getOrDefault(offer.order(), offer.order() + 1));
    }

    /** All that there is. */
    Within everything() {
        return new Within(0, all.size());
    }

    /**
     * A stretch of the offers in the order of the tree.
     *
     * @param first the first
     * @param end the one after the last
     */
    record Within(int first, int end) {
        /** Those of a list in order that lie in the stretch; found by halving. */
        List<Offer> of(List<Offer> ordered) {
            return ordered.subList(from(ordered, first), from(ordered, end));
        }

        private static int from(List<Offer> ordered, int order) {
            int low = 0;
            int high = ordered.size();
            while (low < high) {
                int middle = (low + high) >>> 1;
                if (ordered.get(middle).order() < order) {
                    low = middle + 1;
                } else {
                    high = middle;
                }
            }
            return low;
        }
    }

    private void parts(List<Part> parts, TreePath path, Offer above) {
        for (Part part : parts) {
            if (part instanceof Cut cut) {
                cut(cut, Product.Kind.CUT, path, above);
            } else if (part instanceof Way way) {
                cut(way.work(), Product.Kind.WAY, path, above);
            }
        }
    }

    private void cut(Cut cut, Product.Kind kind, TreePath path, Offer above) {
        TreePath at = path.then(cut.name());
        List<Stated> own = new ArrayList<>(CutClauses.ofCut(cut, at));
        own.addAll(asSold(cut, at));
        Offer offer = new Offer(all.size(), new Product(kind, at), Names.of(cut, pieces), own, above);
        all.add(offer);
        for (Portion portion : cut.portions()) {
            TreePath of = at.then(portion.name());
            all.add(new Offer(
                    all.size(),
                    new Product(Product.Kind.PORTION, of),
                    Names.only(portion.name()),
                    SupplyClauses.ofPortion(portion, of),
                    offer));
        }
        parts(cut.parts(), at, offer);
        ends.put(offer.order(), all.size());
    }

    /** What holds of a cut because of how it is sold: whole, or worked in the way that is the rule. */
    private static List<Stated> asSold(Cut cut, TreePath path) {
        List<Stated> stated = new ArrayList<>();
        for (Portion portion : cut.portions()) {
            if (portion.aim() instanceof Aim.Number into && into.number() == 1) {
                stated.addAll(SupplyClauses.ofPortion(portion, path.then(portion.name())));
            }
        }
        for (Part part : cut.parts()) {
            if (part instanceof Way way && way.choice() instanceof Choice.AsARule) {
                TreePath of = path.then(way.name());
                stated.addAll(CutClauses.ofCut(way.work(), of));
                stated.addAll(asSold(way.work(), of));
            }
        }
        return stated;
    }

    private void stream(Stream stream, int index) {
        Product product = new Product(Product.Kind.STREAM, TreePath.ROOT.then(stream.name()));
        all.add(new Offer(
                all.size(), product, Names.only(stream.name()), SupplyClauses.ofStream(stream, index), carcass));
    }
}
