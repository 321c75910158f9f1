package dev.gambrel.yields.drift;

import dev.gambrel.text.TradeName;
import dev.gambrel.yields.cuttingtest.CuttingTest;
import dev.gambrel.yields.plan.Kind;
import dev.gambrel.yields.plan.YieldPlan;
import dev.gambrel.yields.reconciliation.Reconciled;
import java.util.List;
import java.util.OptionalDouble;
import java.util.stream.IntStream;

/**
 * How the shares of one cut move.
 *
 * @param cut its line of the plan
 * @param tests which tests tell the weights of the cut and of all its parts, in the order of time; the others say nothing here
 * @param parts one for each part, in the order of the plan
 * @param shape the cut as a whole
 */
public record CutDrift(int cut, List<Integer> tests, List<PartDrift> parts, ShapeDrift shape) {
    /** Copies the lists. */
    public CutDrift {
        tests = List.copyOf(tests);
        parts = List.copyOf(parts);
    }

    /**
     * The parts to be told of: of two only the first, since the other is what it leaves.
     *
     * @return in the order of the plan
     */
    public List<PartDrift> told() {
        return parts.size() == 2 ? parts.subList(0, 1) : parts;
    }

    /** Whether no test of it is out of shape. */
    boolean isInShape() {
        return !(shape instanceof ShapeDrift.Charted charted
                && !charted.chart().signals().isEmpty());
    }

    /** Nothing to say of it where no test tells all its parts. */
    static CutDrift of(List<LabelledTest> all, int cut, Baseline baseline) {
        YieldPlan plan = all.get(0).test().plan();
        List<Integer> parts = parts(plan, cut);
        List<Integer> used = IntStream.range(0, all.size())
                .filter(t -> tells(all.get(t).test(), parts))
                .boxed()
                .toList();
        if (used.isEmpty()) {
            return new CutDrift(cut, used, List.of(), new ShapeDrift.NoRatio());
        }
        List<CuttingTest> tests = used.stream().map(t -> all.get(t).test()).toList();
        return new CutDrift(
                cut,
                used,
                parts.stream()
                        .map(part -> PartDrift.of(part, percents(tests, part), baseline))
                        .toList(),
                shape(plan, parts, tests, baseline));
    }

    static List<Integer> parts(YieldPlan plan, int cut) {
        return IntStream.range(plan.firstPart(cut), plan.firstPart(cut + 1))
                .boxed()
                .toList();
    }

    private static boolean tells(CuttingTest test, List<Integer> parts) {
        return parts.stream().allMatch(part -> {
            OptionalDouble weight = weight(test, part);
            return test.share(part).isPresent()
                    && weight.isPresent()
                    && (isLoss(test, part) || weight.getAsDouble() > 0);
        });
    }

    private static boolean isLoss(CuttingTest test, int part) {
        return test.plan().node(part).kind() == Kind.LOSS;
    }

    private static OptionalDouble weight(CuttingTest test, int part) {
        return test.reconciled().weight(part) instanceof Reconciled.Weight known
                ? OptionalDouble.of(known.estimate().mean())
                : OptionalDouble.empty();
    }

    private static List<Double> percents(List<CuttingTest> tests, int part) {
        return tests.stream()
                .map(test -> 100 * test.share(part).orElseThrow().ofMeans())
                .toList();
    }

    private static ShapeDrift shape(YieldPlan plan, List<Integer> parts, List<CuttingTest> tests, Baseline baseline) {
        List<Integer> inHand = parts.stream()
                .filter(part -> plan.node(part).kind() != Kind.LOSS)
                .toList();
        List<TradeName> names = inHand.stream()
                .map(part -> TradeName.of(plan.node(part).name()))
                .toList();
        List<double[]> weights = tests.stream()
                .map(test -> inHand.stream()
                        .mapToDouble(part -> weight(test, part).orElseThrow())
                        .toArray())
                .toList();
        return ShapeDrift.of(names, weights, baseline);
    }
}
