package dev.gambrel.tree.inspection;

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
public final class Site {
    /** Points by which shares that are equal on paper may differ, since those down the tree are products of doubles. */
    public static final double ROUNDING = 1e-9;

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

    /** The carcass, with the whole skeleton entering where it is known. */
    public static Site carcass(List<Part> parts, Optional<Set<TradeName>> bonesIn, boolean unsure) {
        return new Site(null, null, parts, Optional.empty(), bonesIn, unsure);
    }

    /** A cut of this site, with the bones that enter it where they are known. */
    public Site below(
            Cut cut, Optional<PieceIndex.Known> piece, Optional<Set<TradeName>> bonesIn, Set<TreePath> unsureSites) {
        boolean unsure = !unsureSites.isEmpty() && unsureSites.contains(path.then(cut.name()));
        return new Site(this, cut, cut.parts(), piece, bonesIn, unsure);
    }

    /** Whether this is the carcass itself. */
    public boolean isCarcass() {
        return cut == null;
    }

    /** The cut; only to be asked where this is not the carcass. */
    public Cut cut() {
        return cut;
    }

    /** The site that this one is cut from; only to be asked where this is not the carcass. */
    public Site above() {
        return above;
    }

    /** Its address. */
    public TreePath path() {
        return path;
    }

    /** Its name, or "carcass". */
    public String name() {
        return path.last();
    }

    /** What leaves it. */
    public List<Part> parts() {
        return parts;
    }

    /** Whether its parts are all of it. */
    public boolean isDivided() {
        return isCarcass() || cut.isDivided();
    }

    /** The piece that the species knows by its name. */
    public Optional<PieceIndex.Known> piece() {
        return Optional.ofNullable(piece);
    }

    /** The bones that enter, as far as they are known. */
    public Optional<Set<TradeName>> bonesIn() {
        return Optional.ofNullable(bonesIn);
    }

    /** Whether one of the parts could not be read, so that nothing can be said of all of them. */
    public boolean isUnsure() {
        return unsure;
    }

    /** A place at the site itself. */
    public Place.InTree at(Aspect aspect) {
        return new Place.InTree(path, aspect);
    }

    /** A place at one of its parts. */
    public Place.InTree at(Part part, Aspect aspect) {
        return new Place.InTree(path.then(part.name()), aspect);
    }

    /** This site and those above it, nearest first. */
    public List<Site> upward() {
        List<Site> sites = new ArrayList<>();
        for (Site site = this; site != null; site = site.above) {
            sites.add(site);
        }
        return sites;
    }

    /** The mean share of this cut in one further up, as a fraction; nothing if a share on the way is not stated. */
    public Optional<Double> shareOf(Site base) {
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
