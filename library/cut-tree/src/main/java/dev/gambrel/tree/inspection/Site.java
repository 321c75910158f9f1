package dev.gambrel.tree.inspection;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.BoneState;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.Way;
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
    private final List<Way> ways;
    private final boolean isWay;
    private final PieceIndex.Known piece;
    private final Set<TradeName> bonesIn;
    private final boolean unsure;

    private Site(
            Site above,
            Cut cut,
            List<Part> parts,
            boolean isWay,
            Optional<PieceIndex.Known> piece,
            Optional<Set<TradeName>> bonesIn,
            boolean unsure) {
        this.above = above;
        this.cut = cut;
        this.path = above == null ? TreePath.ROOT : above.path.then(cut.name());
        this.ways = waysAmong(parts);
        this.parts = ways.isEmpty() ? parts : worked(parts);
        this.isWay = isWay;
        this.piece = piece.orElse(null);
        this.bonesIn = bonesIn.orElse(null);
        this.unsure = unsure;
    }

    /** The carcass, with the whole skeleton entering where it is known. */
    public static Site carcass(List<Part> parts, Optional<Set<TradeName>> bonesIn, boolean unsure) {
        return new Site(null, null, parts, false, Optional.empty(), bonesIn, unsure);
    }

    private static List<Way> waysAmong(List<Part> parts) {
        List<Way> ways = new ArrayList<>(0);
        for (Part part : parts) {
            if (part instanceof Way way) {
                ways.add(way);
            }
        }
        return ways;
    }

    private static List<Part> worked(List<Part> parts) {
        return parts.stream()
                .<Part>map(part -> part instanceof Way way ? way.work() : part)
                .toList();
    }

    /** A cut of this site, with the bones that enter it where they are known. */
    public Site below(
            Cut cut, Optional<PieceIndex.Known> piece, Optional<Set<TradeName>> bonesIn, Set<TreePath> unsureSites) {
        return new Site(this, cut, cut.parts(), false, piece, bonesIn, isUnsure(cut, unsureSites));
    }

    /** A way in which this site is worked: all of the cut enters it. */
    public Site way(Way way, Optional<Set<TradeName>> bonesIn, Set<TreePath> unsureSites) {
        Cut work = way.work();
        return new Site(this, work, work.parts(), true, Optional.empty(), bonesIn, isUnsure(work, unsureSites));
    }

    private boolean isUnsure(Cut cut, Set<TreePath> unsureSites) {
        return !unsureSites.isEmpty() && unsureSites.contains(path.then(cut.name()));
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

    /** Its name, or "carcass"; of a way with the cut before it: "topside worked as steaks". */
    public String name() {
        return isWay ? above.name() + " worked as " + path.last() : path.last();
    }

    /** What leaves it; of a site that is worked in ways, the work of each way, which is all of it. */
    public List<Part> parts() {
        return parts;
    }

    /** The ways in which it is worked; none for most. */
    public List<Way> ways() {
        return ways;
    }

    /** Whether it is worked in ways, so that its parts are not parts of one whole but stand for one another. */
    public boolean hasWays() {
        return !ways.isEmpty();
    }

    /** Whether it is a way in which the site above is worked. */
    public boolean isWay() {
        return isWay;
    }

    /** Whether bone is left in: what a way does not say, its cut says. Only to be asked where this is not the carcass. */
    public BoneState boneState() {
        BoneState own = cut.description().boneState();
        boolean cutSays = isWay && own == BoneState.NOT_STATED && !above.isCarcass();
        return cutSays ? above.boneState() : own;
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

    /** The mean share of this cut in one further up, as a fraction, a way being all of its cut; nothing if a share on the way is not stated. */
    public Optional<Double> shareOf(Site base) {
        double product = 1;
        for (Site site = this; site != base; site = site.above) {
            if (site.isWay) {
                continue;
            }
            if (!(site.cut.share() instanceof Share.Stated stated) || site.above.isUnsure()) {
                return Optional.empty();
            }
            product *= stated.expected().mean() / 100;
        }
        return Optional.of(product);
    }
}
