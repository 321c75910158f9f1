package dev.gambrel.blends.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;

/** Believes no plan of a solver before every row has been worked out again. */
record Verified(Solver solver) implements Solver {
    /** How near a row must be held: a part of the whole batch, or of a point of lean. */
    static final double NEAR = 1e-8;

    @Override
    public Optional<List<Double>> solve(Programme programme) {
        return solver.solve(programme).map(x -> verified(programme, x));
    }

    private static List<Double> verified(Programme programme, List<Double> x) {
        List<Double> plan = new ArrayList<>(x.size());
        for (int i = 0; i < x.size(); i++) {
            double most = programme.most().get(i);
            double inside = Math.max(0, Math.min(most, x.get(i)));
            if (!(Math.abs(inside - x.get(i)) <= NEAR)) {
                throw new NoAnswer("the solver's plan is out of bounds");
            }
            plan.add(inside);
        }
        for (Programme.Row row : programme.rows()) {
            double largest = row.factors().stream().mapToDouble(Math::abs).max().orElse(1);
            if (!(row.missedBy(plan) <= NEAR * Math.max(1, largest))) {
                throw new NoAnswer("the solver's plan does not hold");
            }
        }
        return plan;
    }
}
