package dev.gambrel.yields.reconciliation;

import dev.gambrel.yields.figure.Estimate;
import java.util.List;

/** What is known of the weight of a node once all weighings are brought into balance. */
public sealed interface Reconciled {
    /**
     * A weight.
     *
     * @param estimate the weight and its standard deviation
     */
    record Weight(Estimate estimate) implements Reconciled {}

    /**
     * The node has sisters of which nothing is known either: only what they weigh together is.
     *
     * @param cut what they are cut from
     * @param parts the nodes, this one among them, in order
     * @param sum what they weigh together
     */
    record OnlyTogether(int cut, List<Integer> parts, Estimate sum) implements Reconciled {
        /** Copies the list. */
        public OnlyTogether {
            parts = List.copyOf(parts);
        }
    }

    /** The readings say nothing of it, since what it is cut from is not known either. */
    record NotKnown() implements Reconciled {}
}
