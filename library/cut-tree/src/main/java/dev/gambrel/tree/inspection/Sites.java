package dev.gambrel.tree.inspection;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.BoneState;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.anatomy.Piece;
import java.util.ArrayList;
import java.util.Collections;
import java.util.IdentityHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Every place of a tree where something is divided, from the carcass down, with the bones that enter it.
 *
 * <p>Bones flow downward. A bone named in a {@code bone} line leaves there. What a cut takes with it is what it is said
 * to contain, or else what lies in the piece that the species knows by its name, less the pieces that are cut from
 * beside it. Of a cut that the species does not know, nothing is known, unless it is boneless.
 */
public final class Sites {
    private final PieceIndex index;
    private final Set<TreePath> unsure;
    private final List<Site> all = new ArrayList<>();

    private Sites(PieceIndex index, Set<TreePath> inDoubt) {
        this.index = index;
        this.unsure = inDoubt.stream().map(TreePath::parent).collect(Collectors.toSet());
    }

    /** All sites, carcass first and each before what is cut from it. */
    public static List<Site> of(CutTree tree, PieceIndex index, Set<TreePath> inDoubt) {
        Sites sites = new Sites(index, inDoubt);
        Set<TradeName> skeleton = index.allBones();
        sites.visit(Site.carcass(
                tree.parts(),
                skeleton.isEmpty() ? Optional.empty() : Optional.of(skeleton),
                sites.unsure.contains(TreePath.ROOT)));
        return List.copyOf(sites.all);
    }

    private void visit(Site site) {
        all.add(site);
        Set<TradeName> taken = takenOut(site, index);
        Set<Piece> beside = piecesAt(site);
        for (Part part : site.parts()) {
            if (part instanceof Cut cut) {
                Optional<PieceIndex.Known> piece = index.pieceOf(cut);
                Optional<Set<TradeName>> bones = bonesInto(cut, piece, site, taken, beside);
                visit(site.below(cut, piece, bones, unsure));
            }
        }
    }

    private Optional<Set<TradeName>> bonesInto(
            Cut cut, Optional<PieceIndex.Known> piece, Site site, Set<TradeName> taken, Set<Piece> beside) {
        Set<TradeName> named = new LinkedHashSet<>();
        cut.description().contents().forEach(name -> index.bone(name).ifPresent(named::add));
        if (!named.isEmpty()) {
            return Optional.of(named);
        }
        if (piece.isPresent() && site.bonesIn().isPresent()) {
            Set<TradeName> bones = index.bonesOf(piece.get().piece(), beside);
            bones.retainAll(site.bonesIn().get());
            bones.removeAll(taken);
            return Optional.of(bones);
        }
        boolean saysNone = cut.description().boneState() == BoneState.BONELESS
                && cut.parts().stream().noneMatch(part -> part instanceof Part.Bone);
        return saysNone ? Optional.of(Set.of()) : Optional.empty();
    }

    private Set<Piece> piecesAt(Site site) {
        Set<Piece> pieces = Collections.newSetFromMap(new IdentityHashMap<>());
        for (Part part : site.parts()) {
            if (part instanceof Cut cut) {
                index.pieceOf(cut).ifPresent(known -> pieces.add(known.piece()));
            }
        }
        return pieces;
    }

    /** The bones that are taken out at a site by name. */
    public static Set<TradeName> takenOut(Site site, PieceIndex index) {
        Set<TradeName> taken = new LinkedHashSet<>();
        for (Part part : site.parts()) {
            if (part instanceof Part.Bone bone) {
                bone.bones().forEach(name -> index.bone(name).ifPresent(taken::add));
            }
        }
        return taken;
    }
}
