package dev.gambrel.tree.anatomy;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Expected;
import dev.gambrel.text.TradeName;
import java.util.List;

/**
 * A piece of the animal that the trade knows by name, whoever cuts it.
 *
 * @param name the name that messages print
 * @param otherNames what it is called elsewhere
 * @param pieces how many to a carcass
 * @param anatomy what lies in it and in no smaller piece named here
 * @param published what print says of its weight
 * @param references its numbers in published schemes
 * @param parts the smaller pieces in it
 */
public record Piece(
        TradeName name,
        List<OtherName> otherNames,
        PieceCount pieces,
        Anatomy anatomy,
        List<Published> published,
        List<Reference> references,
        List<Piece> parts) {
    /** Copies the lists. */
    public Piece {
        otherNames = List.copyOf(otherNames);
        published = List.copyOf(published);
        references = List.copyOf(references);
        parts = List.copyOf(parts);
    }

    /**
     * What lies in a piece.
     *
     * @param bones bones, or parts of them
     * @param muscles muscles, or parts of them: one may run through two pieces
     * @param glands lymph nodes and other glands
     */
    public record Anatomy(List<Structure> bones, List<Structure> muscles, List<Structure> glands) {
        /** Nothing named. */
        public static final Anatomy NONE = new Anatomy(List.of(), List.of(), List.of());

        /** Copies the lists. */
        public Anatomy {
            bones = List.copyOf(bones);
            muscles = List.copyOf(muscles);
            glands = List.copyOf(glands);
        }
    }

    /**
     * A bone, muscle or gland.
     *
     * @param name the trade's word
     * @param otherNames the anatomist's word and others
     */
    public record Structure(TradeName name, List<OtherName> otherNames) {
        /** Copies the list. */
        public Structure {
            otherNames = List.copyOf(otherNames);
        }
    }

    /**
     * A published share.
     *
     * @param expected per cent as printed
     * @param of "carcass" or the name of a larger piece
     * @param sources where it is printed
     */
    public record Published(Expected expected, TradeName of, List<TradeName> sources) {
        /**
         * Copies the list.
         *
         * @throws IllegalArgumentException if the figure is no share
         */
        public Published {
            expected.measuring(Dimension.SHARE);
            sources = List.copyOf(sources);
        }
    }
}
