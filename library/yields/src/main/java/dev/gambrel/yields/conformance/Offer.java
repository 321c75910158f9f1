package dev.gambrel.yields.conformance;

import dev.gambrel.text.TradeName;
import dev.gambrel.yields.conformance.clause.Clause;
import dev.gambrel.yields.conformance.clause.Quality;
import dev.gambrel.yields.conformance.clause.Stated;
import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Predicate;

/** Something of the house's with its names, and all that is laid down of it, there and further up. */
final class Offer {
    private final int order;
    private final Product product;
    private final Names names;
    private final List<Stated> own;
    private final Offer above;

    /** Of nothing but its clauses: the carcass, with what is laid down for everything. */
    Offer(Product product, List<Stated> own) {
        this(-1, product, Names.only(TradeName.of("carcass")), own, null);
    }

    Offer(int order, Product product, Names names, List<Stated> own, Offer above) {
        this.order = order;
        this.product = product;
        this.names = names;
        this.own = own;
        this.above = above;
    }

    /** What is laid down here, in the order of the tree. */
    List<Stated> own() {
        return own;
    }

    /** The place among all offers, in the order of the tree. */
    int order() {
        return order;
    }

    Product product() {
        return product;
    }

    Names names() {
        return names;
    }

    /** What is laid down about a quality, nearest first, as far up as it holds down here. */
    List<Stated> held(Quality quality, Predicate<Clause> which) {
        List<Stated> held = new ArrayList<>();
        Offer at = this;
        while (at != null) {
            at.own.stream()
                    .filter(stated -> stated.clause().quality() == quality && which.test(stated.clause()))
                    .forEach(held::add);
            at = at.handsDown(quality) ? at.above : null;
        }
        return held;
    }

    /** All that is laid down about a quality where anything is, nearest first; what stands further up gives way to it. */
    List<Stated> nearest(Quality quality) {
        for (Offer at = this; at != null; at = at.handsDown(quality) ? at.above : null) {
            List<Stated> here = at.own.stream()
                    .filter(stated -> stated.clause().quality() == quality)
                    .toList();
            if (!here.isEmpty()) {
                return here;
            }
        }
        return List.of();
    }

    /** What is laid down further up and holds here too: of each quality that is inherited, the nearest. */
    List<Stated> inherited() {
        Set<Quality> said = EnumSet.noneOf(Quality.class);
        own.forEach(stated -> said.add(stated.clause().quality()));
        List<Stated> inherited = new ArrayList<>();
        for (Offer at = above; at != null; at = at.above) {
            List<Stated> here = at.own.stream()
                    .filter(stated -> stated.clause().quality().isInherited())
                    .filter(stated -> !said.contains(stated.clause().quality()))
                    .toList();
            here.forEach(stated -> said.add(stated.clause().quality()));
            inherited.addAll(here);
        }
        return inherited;
    }

    /** What is laid down of the cuts that it lies in, and does not hold for each of their parts. */
    List<Stated> beyond(Quality quality, Predicate<Clause> which) {
        List<Stated> found = new ArrayList<>();
        for (Offer at = above; at != null; at = at.above) {
            at.own.stream()
                    .filter(stated -> stated.clause().quality() == quality && which.test(stated.clause()))
                    .forEach(found::add);
        }
        return found;
    }

    /** A portion is cut from a cut as that is trimmed, and a way is the cut itself; a cut has of the cut above only what is inherited. */
    private boolean handsDown(Quality quality) {
        boolean isOfItsOwnSize = quality == Quality.WEIGHT || quality == Quality.THICKNESS || quality == Quality.FEWEST;
        return switch (product.kind()) {
            case WAY -> true;
            case PORTION -> !isOfItsOwnSize;
            case CUT, STREAM, CARCASS -> quality.isInherited();
        };
    }
}
