package dev.gambrel.tree.portion;

/** How many portions there must be at the least; a limit. */
public sealed interface Fewest {
    /**
     * So many from so much.
     *
     * @param number how many
     * @param whole what they are counted from
     */
    record From(int number, Whole whole) implements Fewest {
        /**
         * How many one piece must give, the pieces of a carcass taken as alike.
         *
         * @param pieces how many pieces a carcass gives, 1 or 2
         * @return the number, rounded up
         */
        public long fromOnePiece(int pieces) {
            return switch (whole) {
                case PIECE -> number;
                case SIDE -> pieces == 1 ? 2L * number : number;
                case CARCASS -> (number + pieces - 1L) / pieces;
            };
        }
    }

    /** Nothing was said. */
    record NotStated() implements Fewest {}

    /** What portions are counted from. */
    enum Whole {
        /** One piece of the cut. */
        PIECE("piece"),
        /** One side of the carcass. */
        SIDE("side"),
        /** The whole carcass. */
        CARCASS("carcass");

        private final String words;

        Whole(String words) {
            this.words = words;
        }

        /**
         * In a sentence.
         *
         * @return "piece", "side" or "carcass"
         */
        public String words() {
            return words;
        }
    }
}
