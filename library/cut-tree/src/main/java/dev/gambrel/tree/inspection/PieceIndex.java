package dev.gambrel.tree.inspection;

import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.anatomy.OtherName;
import dev.gambrel.tree.anatomy.Piece;
import dev.gambrel.tree.anatomy.Species;
import java.util.ArrayList;
import java.util.Collection;
import java.util.Collections;
import java.util.HashMap;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.stream.Stream;

/** The pieces, bones, muscles and glands of one species by every name they have. */
public final class PieceIndex {
    /** A piece with the names of the pieces that hold it, outermost first, itself last. */
    public record Known(Piece piece, List<Piece> chain) {
        /** Whether this piece is the other, or lies in it. */
        public boolean isWithin(Piece other) {
            return chain.stream().anyMatch(piece -> piece == other);
        }
    }

    /** A name that means more pieces than this leads to none of them, so that asking often stays cheap. */
    private static final int MOST_MEANINGS = 64;

    private final Map<TradeName, List<Known>> pieces = new LinkedHashMap<>();
    private final Map<TradeName, List<Known>> ownNames = new HashMap<>();
    private final Map<TradeName, TradeName> bones = new LinkedHashMap<>();
    private final Map<TradeName, TradeName> muscles = new LinkedHashMap<>();
    private final Map<TradeName, TradeName> glands = new LinkedHashMap<>();
    private final Map<TradeName, List<Known>> glandPieces = new HashMap<>();
    private final Set<TradeName> allBones;

    /** Lists all names of a species, O(structures). */
    public PieceIndex(Species species) {
        species.pieces().forEach(piece -> add(piece, List.of()));
        allBones = Collections.unmodifiableSet(new LinkedHashSet<>(bones.values()));
    }

    private void add(Piece piece, List<Piece> above) {
        List<Piece> chain = new ArrayList<>(above);
        chain.add(piece);
        Known known = new Known(piece, chain);
        ownNames.computeIfAbsent(piece.name(), n -> new ArrayList<>()).add(known);
        named(piece.name(), piece.otherNames())
                .forEach(name ->
                        pieces.computeIfAbsent(name, n -> new ArrayList<>()).add(known));
        addStructures(piece.anatomy().bones(), bones);
        addStructures(piece.anatomy().muscles(), muscles);
        addStructures(piece.anatomy().glands(), glands);
        piece.anatomy()
                .glands()
                .forEach(gland -> glandPieces
                        .computeIfAbsent(gland.name(), n -> new ArrayList<>())
                        .add(known));
        piece.parts().forEach(part -> add(part, chain));
    }

    private static void addStructures(List<Piece.Structure> structures, Map<TradeName, TradeName> index) {
        for (Piece.Structure structure : structures) {
            named(structure.name(), structure.otherNames()).forEach(name -> index.putIfAbsent(name, structure.name()));
        }
    }

    private static Stream<TradeName> named(TradeName name, List<OtherName> others) {
        return Stream.concat(Stream.of(name), others.stream().map(OtherName::name))
                .distinct();
    }

    /** The one piece of a name; nothing if there is none, or if the name means several. */
    public Optional<Known> piece(TradeName name) {
        List<Known> found = piecesCalled(name);
        return found.size() == 1 ? Optional.of(found.get(0)) : Optional.empty();
    }

    /**
     * The piece that a cut is: that of its name or, where the name means several, the only one of them that one of its
     * other names leads to.
     */
    public Optional<Known> pieceOf(Cut cut) {
        List<Known> found = piecesCalled(cut.name());
        if (found.size() <= 1 || found.size() > MOST_MEANINGS) {
            return found.size() > 1 ? Optional.empty() : found.stream().findFirst();
        }
        Set<Piece> meant = Collections.newSetFromMap(new IdentityHashMap<>());
        cut.description().otherNames().stream()
                .filter(other -> !other.name().equals(cut.name()))
                .map(other -> piecesCalled(other.name()))
                .filter(pieces -> pieces.size() <= MOST_MEANINGS)
                .forEach(pieces -> pieces.forEach(known -> meant.add(known.piece())));
        List<Known> left =
                found.stream().filter(known -> meant.contains(known.piece())).toList();
        return left.size() == 1 ? Optional.of(left.get(0)) : Optional.empty();
    }

    /** All pieces of a name; a piece's own name comes before what it is called elsewhere. */
    public List<Known> piecesCalled(TradeName name) {
        List<Known> own = ownNames.getOrDefault(name, List.of());
        return own.isEmpty() ? pieces.getOrDefault(name, List.of()) : own;
    }

    /** The bone of a name, by the name that the species gives it. */
    public Optional<TradeName> bone(TradeName name) {
        return Optional.ofNullable(bones.get(name));
    }

    /** The muscle of a name, by the name that the species gives it. */
    public Optional<TradeName> muscle(TradeName name) {
        return Optional.ofNullable(muscles.get(name));
    }

    /** The gland of a name, by the name that the species gives it. */
    public Optional<TradeName> gland(TradeName name) {
        return Optional.ofNullable(glands.get(name));
    }

    /** The pieces that a gland lies in. */
    public List<Known> piecesWithGland(TradeName gland) {
        return glandPieces.getOrDefault(gland, List.of());
    }

    /** Every name of a piece. */
    public Collection<TradeName> pieceNames() {
        return pieces.keySet();
    }

    /** Every name of a bone. */
    public Collection<TradeName> boneNames() {
        return bones.keySet();
    }

    /** Every name of a muscle. */
    public Collection<TradeName> muscleNames() {
        return muscles.keySet();
    }

    /** Every name of a gland. */
    public Collection<TradeName> glandNames() {
        return glands.keySet();
    }

    /** Every bone of the species; empty if none is declared. */
    public Set<TradeName> allBones() {
        return allBones;
    }

    /** The bones of a piece and of the pieces in it, but for those pieces that are cut from it beforehand. */
    public Set<TradeName> bonesOf(Piece piece, Set<Piece> without) {
        Set<TradeName> found = new LinkedHashSet<>();
        collectBones(piece, without, found);
        return found;
    }

    private static void collectBones(Piece piece, Set<Piece> without, Set<TradeName> found) {
        piece.anatomy().bones().forEach(bone -> found.add(bone.name()));
        piece.parts().stream()
                .filter(part -> !without.contains(part))
                .forEach(part -> collectBones(part, without, found));
    }
}
