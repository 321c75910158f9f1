package dev.gambrel.yields.batch;

/**
 * A specification in which an estimated share must agree with what is written elsewhere: only the rules of the tree can tell.
 *
 * @param cut what was weighed
 */
record Unsettled(int cut) implements Decision {
    @Override
    public boolean decide(Row row) {
        return false;
    }
}
