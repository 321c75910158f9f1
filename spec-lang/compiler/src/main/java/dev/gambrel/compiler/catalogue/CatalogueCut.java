package dev.gambrel.compiler.catalogue;

import dev.gambrel.text.TradeName;
import dev.gambrel.tree.anatomy.OtherName;
import dev.gambrel.tree.anatomy.Piece;
import dev.gambrel.tree.anatomy.Piece.Published;
import dev.gambrel.tree.anatomy.Reference;
import java.util.List;

/**
 * One piece of a species with all that the catalogue knows of it. An immutable value.
 *
 * @param path the pieces that hold it, outermost first, itself last
 * @param piece the piece, with its names by region and the smaller pieces in it
 * @param contents all that lies in it, smaller pieces included: each structure once, with every name that the species has
 *     for it
 * @param shares what print says of its weight, in per cent of the carcass or of a larger piece
 * @param numbers its numbers in published schemes
 * @param sameWords its other names that mean another piece as well
 */
public record CatalogueCut(
        List<TradeName> path,
        Piece piece,
        Piece.Anatomy contents,
        List<Cited<Published>> shares,
        List<Cited<Reference>> numbers,
        List<SameWord> sameWords) {
    /** Copies the lists. */
    public CatalogueCut {
        path = List.copyOf(path);
        shares = List.copyOf(shares);
        numbers = List.copyOf(numbers);
        sameWords = List.copyOf(sameWords);
    }

    /**
     * A word that means another piece elsewhere.
     *
     * @param word the name with the regions where it means that other piece; no regions where none are said
     * @param means the name of the other piece
     */
    public record SameWord(OtherName word, TradeName means) {}
}
