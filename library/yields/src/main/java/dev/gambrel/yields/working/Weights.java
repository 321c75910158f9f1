package dev.gambrel.yields.working;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Quantity;
import java.util.function.Function;

/** What conditions may ask to be weighed. */
public interface Weights {
    /**
     * The carcass.
     *
     * @return its expected weight on the specification's own basis
     */
    Quantity carcass();

    /**
     * One piece of a cut.
     *
     * @param soFar the tree with ways settled from the top down; a cut that is asked about has no parts yet
     * @return what one piece of the cut at a path weighs as it comes to the block
     */
    Function<TreePath, PieceWeight> pieces(Worked soFar);

    /** For a specification in which no condition asks what anything weighs. */
    record NotAsked() implements Weights {
        private static final String NEVER = "no condition asks for a weight";

        @Override
        public Quantity carcass() {
            throw new IllegalStateException(NEVER);
        }

        @Override
        public Function<TreePath, PieceWeight> pieces(Worked soFar) {
            throw new IllegalStateException(NEVER);
        }
    }
}
