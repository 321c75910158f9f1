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
     * The parts of it whose shares differ from carcass to carcass; those of the others are fixed.
     *
     * @return their lines
     */
    int[] differing();

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
     * @param differing its parts
     */
    record Unsettled(int cut, int[] differing) implements Decision {
        @Override
        public void decide(Block block) {
            Arrays.fill(block.sure(), false);
        }
    }
}
