package dev.gambrel.blends;

import dev.gambrel.blends.solver.Programme;
import dev.gambrel.blends.solver.Programme.Row;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * An order as a linear programme in parts of the batch, so that its figures are near 1. The last column is how far the lean of the
 * blend strays, which cuts push up to its true value.
 */
record BatchModel(BatchOrder order) {
    private static final double NO_LIMIT = Double.POSITIVE_INFINITY;
    /** Less of a batch than this is nothing. */
    private static final double TRACE = 1e-10;

    private List<Tub> tubs() {
        return order.tubs().all();
    }

    private static List<Double> row(DoubleStream ofTubs, double ofSpread) {
        List<Double> factors = new ArrayList<>(ofTubs.boxed().toList());
        factors.add(ofSpread);
        return factors;
    }

    /** What a kilogram of each tub costs, in parts of the dearest; without prices, how lean it is. */
    List<Double> costs() {
        double unit = dearest();
        return row(tubs().stream().mapToDouble(tub -> cost(tub) / unit), 0);
    }

    /** What a cost of 1 stands for. */
    double dearest() {
        double most = tubs().stream().mapToDouble(BatchModel::cost).max().orElse(0);
        return most > 0 ? most : 1;
    }

    private static double cost(Tub tub) {
        return tub.price() instanceof Price.PerKilogram price ? price.money() : tub.percent();
    }

    /** Of equally cheap blends: the one of tubs nearest to the target, so that the leanest and the fattest keep their use. */
    List<Double> distances() {
        LeanTarget target = order.target();
        double middle = target.high() == 100
                ? target.low()
                : target.low() == 0 ? target.high() : (target.low() + target.high()) / 2;
        List<Double> distances = new ArrayList<>();
        for (Tub tub : tubs()) {
            double byName = 1e-3 * distances.size() / tubs().size();
            distances.add(Math.abs(tub.percent() - middle) / 100 + byName);
        }
        distances.add(0.0);
        return distances;
    }

    List<Double> most() {
        return row(tubs().stream().mapToDouble(tub -> Math.min(1, tub.kilograms() / order.kilograms())), mostSpread());
    }

    private double mostSpread() {
        double most = 0;
        for (int i = 0; i < tubs().size(); i++) {
            most = Math.max(most, order.promise().deviations() > 0 ? Math.sqrt(variance(i)) : 0);
        }
        return most;
    }

    /** The parts make up the whole. */
    Row whole() {
        return new Row(row(tubs().stream().mapToDouble(tub -> 1), 0), 1, 1);
    }

    /**
     * A range of lean is two rows: at the least surely enough, at the most on average. As the parts make up the whole, each tub
     * may count by how much leaner it is than the edge.
     */
    List<Row> target() {
        List<Row> rows = new ArrayList<>();
        LeanTarget target = order.target();
        if (target.low() > 0) {
            rows.add(new Row(leanOver(target.low(), -order.promise().deviations()), 0, NO_LIMIT));
        }
        if (target.high() < 100) {
            rows.add(new Row(leanOver(target.high(), 0), -NO_LIMIT, 0));
        }
        return rows;
    }

    /** The lean that can be promised, as a part of 1. */
    List<Double> promised() {
        return leanOver(0, -order.promise().deviations());
    }

    private List<Double> leanOver(double percent, double ofSpread) {
        return row(tubs().stream().mapToDouble(tub -> (tub.percent() - percent) / 100), ofSpread);
    }

    /** A limit as a row whose figures are no larger than 1. */
    Row limit(Limit limit) {
        double scale = scale(limit);
        return new Row(
                row(tubs().stream().mapToDouble(tub -> limit.factor(tub) / scale), 0),
                -NO_LIMIT,
                limit.most() / order.kilograms() / scale);
    }

    static double scale(Limit limit) {
        return limit.factors().values().stream().mapToDouble(Math::abs).reduce(1, Math::max);
    }

    Programme programme(List<Double> costs, List<Row> cuts) {
        List<Row> rows = new ArrayList<>(cuts);
        rows.add(whole());
        rows.addAll(target());
        order.limits().forEach(limit -> rows.add(limit(limit)));
        return new Programme(costs, most(), rows);
    }

    /** How far the lean of a plan strays, as a part of 1: √ Σ s² x². */
    double spread(List<Double> x) {
        double sum = 0;
        for (int i = 0; i < tubs().size(); i++) {
            sum += variance(i) * x.get(i) * x.get(i);
        }
        return Math.sqrt(sum);
    }

    private double variance(int i) {
        return tubs().get(i).lean().percent().spread().variance() / 1e4;
    }

    /** The tangent of the spread at a plan, which lies nowhere above it: Σ (s² x_i / spread) x ≤ spread. */
    Row cutAt(List<Double> x) {
        double spread = spread(x);
        List<Double> factors = new ArrayList<>();
        for (int i = 0; i < tubs().size(); i++) {
            factors.add(-variance(i) * x.get(i) / spread);
        }
        factors.add(1.0);
        return new Row(factors, 0, NO_LIMIT);
    }

    Blend blend(List<Double> x) {
        List<Taken> taken = new ArrayList<>();
        for (int i = 0; i < tubs().size(); i++) {
            double kilograms = x.get(i) * order.kilograms();
            if (x.get(i) > TRACE) {
                taken.add(new Taken(
                        tubs().get(i), Math.min(kilograms, tubs().get(i).kilograms())));
            }
        }
        return new Blend(taken);
    }
}
