package dev.gambrel.yields.batch;

/** Shares of one cut that differ from carcass to carcass. Immutable; what it finds goes to the row. */
interface Decision {
    /**
     * The cut.
     *
     * @return its line
     */
    int cut();

    /**
     * Puts in the shares of one carcass. Those further up are in already.
     *
     * @param row the carcass
     * @return whether doubles are enough to tell
     */
    boolean decide(Row row);

    /**
     * A specification in which an estimated share must agree with what is written elsewhere: only the rules of the tree can
     * tell.
     *
     * @param cut what was weighed
     */
    record Unsettled(int cut) implements Decision {
        @Override
        public boolean decide(Row row) {
            return false;
        }
    }
}
