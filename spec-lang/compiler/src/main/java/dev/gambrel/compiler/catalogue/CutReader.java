package dev.gambrel.compiler.catalogue;

import dev.gambrel.text.TradeName;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Source;
import dev.gambrel.tree.anatomy.OtherName;
import dev.gambrel.tree.anatomy.Piece;
import dev.gambrel.tree.anatomy.Piece.Structure;
import dev.gambrel.tree.inspection.PieceIndex;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.Set;
import java.util.function.Function;

/** Gathers what a species says of one piece in many places. */
final class CutReader {
    private final CutTree tree;
    private final PieceIndex index;
    private final Map<TradeName, Set<OtherName>> bones;
    private final Map<TradeName, Set<OtherName>> muscles;
    private final Map<TradeName, Set<OtherName>> glands;

    CutReader(CutTree tree, PieceIndex index) {
        this.tree = tree;
        this.index = index;
        List<Piece> all = tree.species().pieces();
        this.bones = gather(all, Piece.Anatomy::bones);
        this.muscles = gather(all, Piece.Anatomy::muscles);
        this.glands = gather(all, Piece.Anatomy::glands);
    }

    CatalogueCut read(PieceIndex.Known known) {
        Piece piece = known.piece();
        return new CatalogueCut(
                known.chain().stream().map(Piece::name).toList(),
                piece,
                new Piece.Anatomy(
                        structures(piece, Piece.Anatomy::bones, bones),
                        structures(piece, Piece.Anatomy::muscles, muscles),
                        structures(piece, Piece.Anatomy::glands, glands)),
                piece.published().stream()
                        .map(share -> new Cited<>(share, sources(share.sources())))
                        .toList(),
                piece.references().stream()
                        .map(number -> new Cited<>(number, sources(number.sources())))
                        .toList(),
                sameWords(piece));
    }

    /** The sources of these names that are declared. */
    List<Source> sources(List<TradeName> names) {
        return names.stream().map(tree::source).flatMap(Optional::stream).toList();
    }

    private static Map<TradeName, Set<OtherName>> gather(
            List<Piece> pieces, Function<Piece.Anatomy, List<Structure>> kind) {
        Map<TradeName, Set<OtherName>> names = new LinkedHashMap<>();
        pieces.forEach(piece -> gather(piece, kind, names));
        return names;
    }

    private static void gather(
            Piece piece, Function<Piece.Anatomy, List<Structure>> kind, Map<TradeName, Set<OtherName>> names) {
        kind.apply(piece.anatomy())
                .forEach(structure -> names.computeIfAbsent(structure.name(), name -> new LinkedHashSet<>())
                        .addAll(structure.otherNames()));
        piece.parts().forEach(part -> gather(part, kind, names));
    }

    private static List<Structure> structures(
            Piece piece, Function<Piece.Anatomy, List<Structure>> kind, Map<TradeName, Set<OtherName>> known) {
        return gather(List.of(piece), kind).keySet().stream()
                .map(name -> new Structure(name, new ArrayList<>(known.get(name))))
                .toList();
    }

    private List<CatalogueCut.SameWord> sameWords(Piece piece) {
        List<CatalogueCut.SameWord> found = new ArrayList<>();
        for (OtherName name : piece.otherNames()) {
            index.piecesCalled(name.name()).stream()
                    .map(PieceIndex.Known::piece)
                    .filter(other -> other != piece)
                    .forEach(
                            other -> found.add(new CatalogueCut.SameWord(regionsOf(name.name(), other), other.name())));
        }
        return found;
    }

    private static OtherName regionsOf(TradeName word, Piece other) {
        return other.otherNames().stream()
                .filter(name -> name.name().equals(word))
                .findFirst()
                .orElse(new OtherName(word, List.of()));
    }
}
