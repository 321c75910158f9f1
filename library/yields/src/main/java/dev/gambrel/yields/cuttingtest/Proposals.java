package dev.gambrel.yields.cuttingtest;

import dev.gambrel.quantity.Unit;
import dev.gambrel.yields.plan.Kind;
import dev.gambrel.yields.plan.YieldPlan;
import dev.gambrel.yields.reconciliation.Reconciled;
import dev.gambrel.yields.reconciliation.Reconciliation;
import dev.gambrel.yields.reconciliation.Shift;
import dev.gambrel.yields.reconciliation.pattern.Explanations.Proposed;
import dev.gambrel.yields.reconciliation.pattern.Pattern;
import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/** The mistakes that may have been made on a sheet, by the scales used, the pairs and the trims. */
final class Proposals {
    /** What is too much in a reading of pounds that is taken for kilograms, as a part of it. */
    private static final double POUNDS_TOO_MUCH = 1 - Unit.POUND.factor().doubleValue();

    private final YieldPlan plan;
    private final Map<Integer, PartReading> readings;
    private final Reconciliation sheet;
    private final List<Integer> nodes;
    private final List<Proposed> all = new ArrayList<>();

    private Proposals(YieldPlan plan, Map<Integer, PartReading> readings, Reconciliation sheet) {
        this.plan = plan;
        this.readings = readings;
        this.sheet = sheet;
        this.nodes = readings.keySet().stream().sorted().toList();
    }

    static List<Proposed> of(YieldPlan plan, Map<Integer, PartReading> readings, Reconciliation sheet) {
        Proposals proposals = new Proposals(plan, readings, sheet);
        proposals.scales().forEach(proposals::addScale);
        proposals.nodes.forEach(proposals::addPart);
        proposals.addTrims();
        return proposals.all;
    }

    private Set<String> scales() {
        Set<String> names = new LinkedHashSet<>();
        nodes.forEach(v -> names.addAll(readings.get(v).byScale().keySet()));
        return names;
    }

    /** Of a scale that weighed one thing alone only that one reading can be wrong. */
    private void addScale(String scale) {
        List<Integer> on = nodes.stream()
                .filter(v -> readings.get(v).byScale().containsKey(scale))
                .toList();
        if (on.size() < 2) {
            return;
        }
        double[] times = on.stream().mapToDouble(v -> on(v, scale).times()).toArray();
        double[] weights = on.stream().mapToDouble(v -> weightOn(v, scale)).toArray();
        add(new Pattern.SameAmountEachWeighing(scale, on), on, times);
        add(new Pattern.SamePartOfEachWeight(scale, on), on, weights);
        double[] pounds = on.stream()
                .mapToDouble(v -> on(v, scale).kilograms() * POUNDS_TOO_MUCH)
                .toArray();
        add(new Pattern.PoundsAsKilograms(on), on, pounds);
    }

    private Weighing on(int node, String scale) {
        return readings.get(node).byScale().get(scale);
    }

    /** The reconciled weight as far as it was weighed on the scale. */
    private double weightOn(int node, String scale) {
        double part = on(node, scale).kilograms() / read(node);
        double whole = sheet.weight(node) instanceof Reconciled.Weight known
                ? known.estimate().mean()
                : read(node);
        return Double.isFinite(part) ? part * whole : 0;
    }

    private double read(int node) {
        return readings.get(node).kilograms();
    }

    private void addPart(int v) {
        Kind kind = plan.node(v).kind();
        if (plan.node(v).pieces().whole() == 2 && (kind == Kind.CUT || kind == Kind.TRIMMED)) {
            add(new Pattern.OneWrittenAsPair(v), List.of(v), -read(v));
            add(new Pattern.PairCountedTwice(v), List.of(v), read(v) / 2);
        }
        add(new Pattern.PoundsAsKilograms(List.of(v)), List.of(v), read(v) * POUNDS_TOO_MUCH);
    }

    private void addTrims() {
        List<Integer> cuts = nodes.stream()
                .filter(v -> plan.node(v).kind() == Kind.TRIMMED
                        && trims(v).findAny().isPresent())
                .toList();
        cuts.forEach(v -> addTrims(List.of(v)));
        if (cuts.size() > 1) {
            addTrims(cuts);
        }
    }

    private void addTrims(List<Integer> cuts) {
        List<Integer> trims = cuts.stream().flatMap(v -> trims(v).boxed()).toList();
        double[] trim = cuts.stream()
                .mapToDouble(v -> trims(v).mapToDouble(this::read).sum())
                .toArray();
        add(new Pattern.WeighedBeforeTrimming(cuts, trims), cuts, trim);
    }

    /** The trims that were weighed of the cut that a trimmed cut is left of. */
    private IntStream trims(int trimmed) {
        int cut = plan.node(trimmed).above();
        return IntStream.range(plan.firstPart(cut), plan.firstPart(cut + 1))
                .filter(v -> plan.node(v).kind() == Kind.TRIM && readings.containsKey(v));
    }

    private void add(Pattern pattern, List<Integer> on, double... strays) {
        all.add(new Proposed(pattern, Shift.of(on, strays)));
    }
}
