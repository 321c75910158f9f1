package dev.gambrel.tree.rules;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Share;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** A place where something is divided: the carcass, or a cut, with all that the rules need to know of it. */
final class Site {
    /** Points by which shares that are equal on paper may differ, since those down the tree are products of doubles. */
    static final double ROUNDING = 1e-9;

    private final Site above;
    private final Cut cut;
    private final TreePath path;
    private final List<Part> parts;
    private final PieceIndex.Known piece;
    private final Set<TradeName> bonesIn;
    private final boolean unsure;

    private Site(
            Site above,
            Cut cut,
            List<Part> parts,
            Optional<PieceIndex.Known> piece,
            Optional<Set<TradeName>> bonesIn,
            boolean unsure) {
        this.above = above;
        this.cut = cut;
        this.path = above == null ? TreePath.ROOT : above.path.then(cut.name());
        this.parts = parts;
        this.piece = piece.orElse(null);
        this.bonesIn = bonesIn.orElse(null);
        this.unsure = unsure;
    }

    static Site carcass(List<Part> parts, Optional<Set<TradeName>> bonesIn, boolean unsure) {
        return new Site(null, null, parts, Optional.empty(), bonesIn, unsure);
    }

    Site below(Cut cut, Optional<PieceIndex.Known> piece, Optional<Set<TradeName>> bonesIn, Set<TreePath> unsureSites) {
        boolean unsure = !unsureSites.isEmpty() && unsureSites.contains(path.then(cut.name()));
        return new Site(this, cut, cut.parts(), piece, bonesIn, unsure);
    }

    boolean isCarcass() {
        return cut == null;
    }

    /** The cut; only to be asked where this is not the carcass. */
    Cut cut() {
        return cut;
    }

    /** The site that this one is cut from; only to be asked where this is not the carcass. */
    Site above() {
        return above;
    }

    TreePath path() {
        return path;
    }

    String name() {
        return path.last();
    }

    List<Part> parts() {
        return parts;
    }

    boolean isDivided() {
        return isCarcass() || cut.isDivided();
    }

    Optional<PieceIndex.Known> piece() {
        return Optional.ofNullable(piece);
    }

    /** The bones that enter, as far as they are known. */
    Optional<Set<TradeName>> bonesIn() {
        return Optional.ofNullable(bonesIn);
    }

    /** Whether one of the parts could not be read, so that nothing can be said of all of them. */
    boolean isUnsure() {
        return unsure;
    }

    Place.InTree at(Aspect aspect) {
        return new Place.InTree(path, aspect);
    }

    Place.InTree at(Part part, Aspect aspect) {
        return new Place.InTree(path.then(part.name()), aspect);
    }

    /** This site and those above it, nearest first. */
    List<Site> upward() {
        List<Site> sites = new ArrayList<>();
        for (Site site = this; site != null; site = site.above) {
            sites.add(site);
        }
        return sites;
    }

    /** The mean share of this cut in one further up, as a fraction; nothing if a share on the way is not stated. */
    Optional<Double> shareOf(Site base) {
        double product = 1;
        for (Site site = this; site != base; site = site.above) {
            if (!(site.cut.share() instanceof Share.Stated stated) || site.above.isUnsure()) {
                return Optional.empty();
            }
            product *= stated.expected().mean() / 100;
        }
        return Optional.of(product);
    }
}
