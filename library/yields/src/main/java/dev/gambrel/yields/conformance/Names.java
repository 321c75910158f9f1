package dev.gambrel.yields.conformance;

import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.anatomy.OtherName;
import dev.gambrel.tree.anatomy.Piece;
import dev.gambrel.tree.anatomy.Reference;
import dev.gambrel.tree.inspection.PieceIndex;
import java.util.List;

/**
 * By what something can be found.
 *
 * @param name its own name
 * @param otherNames what it is also called
 * @param references its numbers in published schemes
 * @param piece the piece of the animal that it is, where the species knows it; none or one
 */
record Names(TradeName name, List<OtherName> otherNames, List<Reference> references, List<Piece> piece) {
    static Names of(Cut cut, PieceIndex pieces) {
        return new Names(
                cut.name(),
                cut.description().otherNames(),
                cut.description().references(),
                pieces.pieceOf(cut).map(PieceIndex.Known::piece).stream().toList());
    }

    /** Of what has a name and nothing more. */
    static Names only(TradeName name) {
        return new Names(name, List.of(), List.of(), List.of());
    }
}
