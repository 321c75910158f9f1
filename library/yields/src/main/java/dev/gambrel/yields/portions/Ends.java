package dev.gambrel.yields.portions;

import dev.gambrel.tree.Portion;
import dev.gambrel.yields.PortionedPiece;

/** What is no portion at both ends of a piece. */
final class Ends {
    private Ends() {}

    /** Kilograms; where the weight of the ends is not stated they are counted with what is left. */
    static double weight(PortionedPiece piece) {
        return piece.portion().endPieces() instanceof Portion.EndPieces.Weighed ends
                ? ends.weight().mean()
                : 0;
    }
}
