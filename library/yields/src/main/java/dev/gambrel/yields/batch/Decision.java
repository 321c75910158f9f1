package dev.gambrel.yields.batch;

import java.util.Arrays;

/** Shares of one cut that differ from carcass to carcass. Immutable; what it finds goes to the block. */
interface Decision {
    /**
     * The cut.
     *
     * @return its line
     */
    int cut();

    /**
     * Puts in the shares of each carcass of a block, and whether doubles are enough to tell. Those further up are in already.
     *
     * @param block the carcasses
     */
    void decide(Block block);

    /**
     * A specification in which an estimated share must agree with what is written elsewhere: only the rules of the tree can
     * tell.
     *
     * @param cut what was weighed
     */
    record Unsettled(int cut) implements Decision {
        @Override
        public void decide(Block block) {
            Arrays.fill(block.sure(), false);
        }
    }
}
