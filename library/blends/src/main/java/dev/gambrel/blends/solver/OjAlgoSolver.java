package dev.gambrel.blends.solver;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.ojalgo.optimisation.Expression;
import org.ojalgo.optimisation.ExpressionsBasedModel;
import org.ojalgo.optimisation.Optimisation;
import org.ojalgo.optimisation.Variable;

/** ojAlgo's simplex. Continuous programmes are solved on the caller's thread, so the same model gives the same plan. */
final class OjAlgoSolver implements Solver {
    @Override
    public Optional<List<Double>> solve(Programme programme) {
        ExpressionsBasedModel model = new ExpressionsBasedModel();
        List<Variable> columns = columns(model, programme);
        int named = 0;
        for (Programme.Row row : programme.rows()) {
            add(model.newExpression("row " + named++), columns, row);
        }
        Optimisation.Result result = model.minimise();
        if (result.getState().isOptimal()) {
            return Optional.of(plan(result, columns.size()));
        }
        if (result.getState() == Optimisation.State.INFEASIBLE) {
            return Optional.empty();
        }
        throw new NoAnswer("the solver ended with " + result.getState());
    }

    private static List<Variable> columns(ExpressionsBasedModel model, Programme programme) {
        List<Variable> columns = new ArrayList<>();
        for (int i = 0; i < programme.cost().size(); i++) {
            Variable column = model.newVariable("column " + i)
                    .lower(0)
                    .weight(programme.cost().get(i));
            double most = programme.most().get(i);
            columns.add(most < Double.POSITIVE_INFINITY ? column.upper(most) : column);
        }
        return columns;
    }

    private static void add(Expression expression, List<Variable> columns, Programme.Row row) {
        for (int i = 0; i < columns.size(); i++) {
            if (row.factors().get(i) != 0) {
                expression.set(columns.get(i), row.factors().get(i));
            }
        }
        if (row.low() > Double.NEGATIVE_INFINITY) {
            expression.lower(row.low());
        }
        if (row.high() < Double.POSITIVE_INFINITY) {
            expression.upper(row.high());
        }
    }

    private static List<Double> plan(Optimisation.Result result, int columns) {
        List<Double> plan = new ArrayList<>(columns);
        for (int i = 0; i < columns; i++) {
            plan.add(result.doubleValue(i));
        }
        return plan;
    }
}
