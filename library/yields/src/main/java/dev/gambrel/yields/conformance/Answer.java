package dev.gambrel.yields.conformance;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.yields.conformance.clause.Stated;
import java.util.List;

/**
 * What can be said of one clause, and why.
 *
 * @param asked what the buyer requires
 * @param verdict whether it is met
 * @param held what the house lays down about it, nearest first; empty where it lays down nothing
 * @param margin how far it is met or failed
 * @param inside how many pieces are expected inside, where there is something to expect; empty where not
 * @param reason why, with the place in the buyer's tree and, labelled, those in the house's
 */
public record Answer(
        Stated asked, Verdict verdict, List<Stated> held, Margin margin, List<Inside> inside, Diagnostic reason) {
    /** Copies the lists. */
    public Answer {
        held = List.copyOf(held);
        inside = List.copyOf(inside);
    }
}
