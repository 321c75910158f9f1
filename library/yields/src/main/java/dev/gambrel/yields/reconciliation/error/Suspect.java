package dev.gambrel.yields.reconciliation.error;

import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.reconciliation.GlobalTest;
import java.util.List;

/** What may be wrong: as little as the figures can tell from everything else. */
public sealed interface Suspect {
    /**
     * One reading that its own parts and its sisters both speak against.
     *
     * @param node the node that was weighed
     * @param error by how much it reads too much, if it alone is wrong
     * @param after how well the sheet fits without it, and without the suspects before
     */
    record OneReading(int node, Estimate error, GlobalTest after) implements Suspect {
        @Override
        public Estimate size() {
            return error;
        }
    }

    /**
     * One balance that does not hold. One of its readings is wrong, or some weight was not weighed: the figures are the same whichever it
     * is.
     *
     * @param cuts the cuts that share the balance; more than one where the lower ones were not weighed themselves
     * @param readings the nodes whose readings stand in this balance alone; none where all stand in others too, so that only weight
     *     that nobody weighed is left
     * @param missing what lacks: the parts read too little by this, or the cut too much, or it was lost; less than 0 where more
     *     came out than went in
     * @param after how well the sheet fits without this balance, and without the suspects before
     */
    record OneBalance(List<Integer> cuts, List<Integer> readings, Estimate missing, GlobalTest after)
            implements Suspect {
        /** Copies the lists. */
        public OneBalance {
            cuts = List.copyOf(cuts);
            readings = List.copyOf(readings);
        }

        @Override
        public Estimate size() {
            return missing;
        }
    }

    /**
     * How large the error is.
     *
     * @return with its standard deviation
     */
    Estimate size();

    /**
     * How well the sheet fits without it.
     *
     * @return the chi-square that remains
     */
    GlobalTest after();

    /**
     * The error in standard deviations; its square is what the chi-square falls by.
     *
     * @return standard normal if nothing is wrong
     */
    default double z() {
        return size().mean() / Math.sqrt(size().spread().variance());
    }
}
