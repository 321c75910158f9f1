package dev.gambrel.yields.table;

/**
 * One printed line, every figure already rounded. A figure that does not apply is empty.
 *
 * @param level how deep to set it
 * @param name what it is
 * @param path its address; empty for totals
 * @param weights how much
 * @param shares how much of what
 * @param goesTo where it goes
 */
record Line(int level, String name, String path, Weights weights, Shares shares, String goesTo) {
    static final String NOT_STATED = "not stated";

    /**
     * @param pieces how many
     * @param all all pieces together
     * @param one one piece
     * @param spread of all pieces
     */
    record Weights(String pieces, String all, String one, Spreading spread) {}

    /**
     * @param sd one standard deviation
     * @param low the low end of the 95 % range
     * @param high its high end
     */
    record Spreading(String sd, String low, String high) {
        static final Spreading UNKNOWN = new Spreading(NOT_STATED, NOT_STATED, NOT_STATED);

        String range() {
            return low.equals(high) ? low : low + " to " + high;
        }
    }

    /**
     * @param ofCutAbove per cent of the cut above
     * @param ofCarcass per cent of the carcass
     */
    record Shares(String ofCutAbove, String ofCarcass) {}
}
