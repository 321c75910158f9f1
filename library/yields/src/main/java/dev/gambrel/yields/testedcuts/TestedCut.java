package dev.gambrel.yields.testedcuts;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.yields.houseshares.CutTests;
import java.util.List;
import java.util.OptionalDouble;

/** A cut, and what the tests say of its shares. */
public sealed interface TestedCut {
    /**
     * Where it stands.
     *
     * @return its address; the root for the carcass
     */
    TreePath path();

    /**
     * Tests that do not count here, and why.
     *
     * @return in the order of the tests
     */
    List<LeftOut> leftOut();

    /**
     * Tests told the weights of all parts that can be weighed.
     *
     * <p>A loss that was not weighed in every one of the tests is kept: it is not found by them, since it is in nobody's hand, and what is
     * missing between the cut and its parts gathers the errors of all weighings. So it keeps the share that is stated, and the parts that
     * were weighed share what it leaves, in the proportions in which they were found.
     *
     * @param path where the cut stands
     * @param parts those whose shares were found, in order, 2 or more
     * @param kept losses that keep what is stated, in order
     * @param tests what the parts weighed
     * @param missing of each test what was missing of the cut, a part of 1; empty unless all tests tell it
     * @param leftOut tests that do not count here
     */
    record Found(
            TreePath path,
            List<TestedPart> parts,
            List<TestedPart> kept,
            CutTests tests,
            List<Double> missing,
            List<LeftOut> leftOut)
            implements TestedCut {
        /** Copies the lists. */
        public Found {
            parts = List.copyOf(parts);
            kept = List.copyOf(kept);
            missing = List.copyOf(missing);
            leftOut = List.copyOf(leftOut);
        }

        /**
         * What the kept losses leave of the cut.
         *
         * @return a part of 1; 1 where there are none
         */
        public double leftByKept() {
            return 1 - kept.stream().mapToDouble(loss -> loss.stated().mean()).sum();
        }

        /**
         * What was missing between the cut and its parts, as a mean of the tests: beside the kept losses, for comparison.
         *
         * @return a part of 1, which may be below 0; nothing unless all tests tell it
         */
        public OptionalDouble meanMissing() {
            return missing.stream().mapToDouble(Double::doubleValue).average();
        }
    }

    /**
     * No shares can be told.
     *
     * @param path where the cut stands
     * @param leftOut why, for each test that has the cut
     */
    record NotFound(TreePath path, List<LeftOut> leftOut) implements TestedCut {
        /** Copies the list. */
        public NotFound {
            leftOut = List.copyOf(leftOut);
        }
    }
}
