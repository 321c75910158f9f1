package dev.gambrel.yields.batch;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.BasisStep;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Way;
import dev.gambrel.tree.choice.Choice;
import dev.gambrel.tree.choice.Condition;
import dev.gambrel.tree.choice.Grade;
import dev.gambrel.tree.choice.WeightRange;
import dev.gambrel.yields.plan.Kind;
import dev.gambrel.yields.plan.YieldPlan;
import dev.gambrel.yields.working.OpenWays.Open;
import dev.gambrel.yields.working.Pairs;
import dev.gambrel.yields.working.Split;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;

/** Finds the lines of ways that depend on the carcass. */
final class OpenCuts {
    private final YieldPlan plan;
    private final CutTree tree;
    private final List<BasisStep> chain;
    private final Pairs pairs;

    OpenCuts(YieldPlan plan, CutTree tree, List<BasisStep> chain, Pairs pairs) {
        this.plan = plan;
        this.tree = tree;
        this.chain = chain;
        this.pairs = pairs;
    }

    List<Decision> of(List<Open> open) {
        return open.stream().map(this::decision).toList();
    }

    private Decision decision(Open open) {
        int cut = line(open.cut());
        int first = plan.firstPart(cut);
        return open.asked() instanceof Condition.Graded graded
                ? graded(open, cut, first, graded.grade())
                : weighed(open, cut, first);
    }

    private int line(TreePath cut) {
        return cut.equals(TreePath.ROOT)
                ? plan.carcass()
                : IntStream.range(0, plan.size())
                        .filter(v -> plan.node(v).kind() == Kind.CUT
                                && plan.node(v).path().equals(cut))
                        .findFirst()
                        .orElseThrow();
    }

    private Decision graded(Open open, int cut, int first, TradeName asked) {
        List<Grade> grades = tree.carcass().grades();
        int at = IntStream.range(0, grades.size())
                .filter(i -> grades.get(i).name().equals(asked))
                .findFirst()
                .orElseThrow();
        Grade grade = grades.get(at);
        double[][] splits = new double[grade.values().size() + 1][];
        splits[0] = notKnown(open.ways());
        for (int i = 1; i < splits.length; i++) {
            splits[i] = open.graded(grade, grade.values().get(i - 1)).stream()
                    .mapToDouble(Split::weight)
                    .toArray();
        }
        return new GradedCut(cut, first, at, splits);
    }

    /** Without the grade a cut is worked as a rule, if there is one. */
    private static double[] notKnown(List<Way> ways) {
        double[] splits = new double[ways.size()];
        int rule = rule(ways);
        if (rule >= 0) {
            splits[rule] = 1;
        } else {
            Arrays.fill(splits, Double.NaN);
        }
        return splits;
    }

    private static int rule(List<Way> ways) {
        return IntStream.range(0, ways.size())
                .filter(i -> ways.get(i).choice() instanceof Choice.AsARule)
                .findFirst()
                .orElse(-1);
    }

    private Decision weighed(Open open, int cut, int first) {
        Range[] ranges = open.ways().stream().map(OpenCuts::range).toArray(Range[]::new);
        WeighedCut.Asked asked = open.asked() instanceof Condition.CarcassWeighs
                ? new WeighedCut.Asked.Carcass(Warnings.left(chain), chain.isEmpty())
                : piece(cut, plan.node(cut).pieces().whole());
        return new WeighedCut(cut, first, ranges, rule(open.ways()), asked);
    }

    private WeighedCut.Asked piece(int cut, int whole) {
        return new WeighedCut.Asked.Piece(path(cut), whole, pairs.apart(whole));
    }

    private static Range range(Way way) {
        return Range.of(
                way.choice() instanceof Choice.When when && when.condition() instanceof Condition.Weighs weighs
                        ? WeightRange.within(weighs.bounds())
                        : WeightRange.ALL);
    }

    private int[] path(int cut) {
        int[] path = new int[plan.node(cut).level()];
        int v = cut;
        for (int level = path.length - 1; level >= 0; level--) {
            path[level] = v;
            v = plan.node(v).above();
        }
        return path;
    }
}
