package dev.gambrel.blends.solver;

import java.util.List;
import java.util.Optional;

/** Solves linear programmes. The same programme gives the same plan. */
@FunctionalInterface
public interface Solver {
    /**
     * A cheapest plan.
     *
     * @param programme what is wanted; its figures near 1 are solved best
     * @return one x for each column, each row held to {@value Verified#NEAR}; nothing where no plan holds every row
     * @throws NoAnswer if the solver gives up, or gives what does not hold
     */
    Optional<List<Double>> solve(Programme programme);

    /**
     * The solver that comes with the library.
     *
     * @return one whose every plan is looked at again in our own arithmetic
     */
    static Solver standard() {
        return new Verified(new OjAlgoSolver());
    }
}
