package dev.gambrel.yields.reconciliation;

import dev.gambrel.yields.figure.Estimate;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;

/**
 * A sum of weights in balance, each times a coefficient, with its variance. O(nodes).
 *
 * <p>A weight that was not read is moved to those that were: it is its parts, or what the other parts leave of its cut. Then with the
 * coefficients c of the readings, their variances V and the balanced weights M y of readings y the variance is c' M V c: least squares is a
 * projection, so M V is the covariance of what it gives, and M V c is one more sheet, that of the readings V c.
 */
final class LinearFigure {
    private final MassTree tree;
    private final Readings readings;
    private final TreeBalance sheet;
    private final double[] coefficient;

    private LinearFigure(Reconciliation sheet, double[] coefficient) {
        this.tree = sheet.tree();
        this.readings = sheet.readings();
        this.sheet = sheet.passes();
        this.coefficient = coefficient;
    }

    static Estimate of(Reconciliation sheet, IntToDoubleFunction coefficient) {
        double[] all =
                IntStream.range(0, sheet.tree().size()).mapToDouble(coefficient).toArray();
        double mean = IntStream.range(0, all.length)
                .filter(v -> all[v] != 0)
                .mapToDouble(v -> all[v] * sheet.passes().weight(v))
                .sum();
        LinearFigure figure = new LinearFigure(sheet, all);
        figure.moveToReadings();
        return Estimate.of(mean, figure.variance(sheet));
    }

    private void moveToReadings() {
        for (int v = tree.size() - 1; v > 0; v--) {
            if (coefficient[v] != 0 && sheet.isOpenBelow(v)) {
                double moved = coefficient[v];
                coefficient[tree.above(v)] += moved;
                tree.parts(tree.above(v)).forEach(part -> coefficient[part] -= moved);
                coefficient[v] = 0;
            }
        }
        for (int v = 0; v < tree.size(); v++) {
            if (coefficient[v] != 0 && !sheet.isUsed(v)) {
                double moved = coefficient[v];
                tree.parts(v).forEach(part -> coefficient[part] += moved);
                coefficient[v] = 0;
            }
        }
    }

    private double variance(Reconciliation reconciled) {
        double[] moves = new double[tree.size()];
        double[] variances = new double[tree.size()];
        for (int v = 0; v < moves.length; v++) {
            variances[v] = readings.variance(v);
            moves[v] = variances[v] * coefficient[v];
        }
        TreeBalance one = new TreeBalance(tree);
        reconciled.released().forEach(one::release);
        one.solve(moves, variances);
        return IntStream.range(0, moves.length)
                .filter(v -> coefficient[v] != 0)
                .mapToDouble(v -> coefficient[v] * one.weight(v))
                .sum();
    }
}
