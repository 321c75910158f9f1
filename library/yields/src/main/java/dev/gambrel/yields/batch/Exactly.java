package dev.gambrel.yields.batch;

import dev.gambrel.diagnostic.Result;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.choice.Grade;
import dev.gambrel.yields.CarcassWeight;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.YieldRow;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.plan.Kind;
import dev.gambrel.yields.plan.YieldPlan;
import dev.gambrel.yields.working.Working;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/** One carcass of a batch by itself, as {@link Yields#forCarcass} has it: what the flat arrays must agree with. */
final class Exactly {
    private static final MathContext DIGITS = new MathContext(15);

    private final CutTree tree;
    private final Working working;
    private final Basis basis;
    private final Readings readings;
    private final Map<Line, Integer> lines = new HashMap<>();

    private record Line(int carcass, TreePath path, Kind kind) {}

    Exactly(CutTree tree, Working working, Basis basis, Readings readings, YieldPlan plan) {
        this.tree = tree;
        this.working = working;
        this.basis = basis;
        this.readings = readings;
        for (int v = 0; v < plan.size(); v++) {
            lines.put(
                    line(plan.node(v).kind(), plan.node(v).level(), plan.node(v).path()), v);
        }
    }

    private static Line line(Kind kind, int level, TreePath path) {
        return new Line(kind == Kind.CARCASS ? level : -1, path, kind);
    }

    Result<ExpectedYields> of(Carcasses carcasses, int i, Unit unit) {
        Working here = working;
        List<Grade> grades = tree.carcass().grades();
        for (int k = 0; k < grades.size(); k++) {
            Grade grade = grades.get(k);
            boolean settled =
                    working.grades().stream().anyMatch(given -> given.grade().equals(grade.name()));
            int value = carcasses.grade(k, i);
            if (!settled && value >= 0) {
                here = here.given(grade.name(), grade.values().get(value));
            }
        }
        CarcassWeight weight = new CarcassWeight(weight(carcasses.kilograms()[i], unit), basis);
        return Yields.of(tree, here).forCarcass(weight, readings.of(carcasses, i));
    }

    private static Quantity weight(double kilograms, Unit unit) {
        BigDecimal exact = BigDecimal.valueOf(Double.isFinite(kilograms) ? kilograms : 0);
        return unit == Unit.KILOGRAM
                ? new Quantity(plain(exact), unit)
                : new Quantity(plain(exact.divide(unit.factor(), DIGITS)), unit);
    }

    private static BigDecimal plain(BigDecimal amount) {
        BigDecimal stripped = amount.stripTrailingZeros();
        return stripped.scale() < 0 ? stripped.setScale(0) : stripped;
    }

    /** What one kilogram gives of some lines of the plan; a way that is not in use weighs nothing. */
    double[] ofOneKilogram(ExpectedYields yields, int[] wanted) {
        double kilograms = yields.given().mass().value();
        double[] all = new double[lines.size()];
        for (YieldRow row : yields.rows()) {
            row.allPieces()
                    .ifPresent(weight ->
                            all[lines.get(line(row.kind(), row.level(), row.path()))] = weight.mean() / kilograms);
        }
        return IntStream.of(wanted).mapToDouble(v -> all[v]).toArray();
    }
}
