package dev.gambrel.yields.cuttingtest;

import static dev.gambrel.yields.Sheet.bone;
import static dev.gambrel.yields.Sheet.cut;
import static dev.gambrel.yields.Sheet.hogget;
import static dev.gambrel.yields.Sheet.loss;
import static dev.gambrel.yields.Sheet.pair;
import static dev.gambrel.yields.Sheet.rest;
import static dev.gambrel.yields.Sheet.trim;

import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.Sheet;
import dev.gambrel.yields.cuttingtest.PartReading.State;
import dev.gambrel.yields.plan.Kind;
import dev.gambrel.yields.plan.Node;
import dev.gambrel.yields.plan.YieldPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.TreeMap;

/**
 * Invented hoggets of Marram Isle Meats as they were weighed, drawn with a seed: shares that stray and close, losses that nobody weighs, the
 * carcass on the rail and all else on the bench, with normal errors as the scales are said to have.
 */
final class WeighedHogget {
    static final Scale RAIL = Scale.ofDivision("rail", 0.020);
    static final Scale BENCH = new Scale("bench", 0.005, 0, 0.002);
    private static final double CARCASS = 22;
    private static final double STRAY = 0.05;

    private static final ExpectedYields EXPECTED = Sheet.yields(
            hogget(
                    pair(
                            "leg",
                            "33.0 ± 0.9",
                            bone("aitch bone", "6.5 ± 0.4", "bones"),
                            cut("chump", "9.5 ± 0.6", trim("fat", "8.0 ± 1.5", "mince")),
                            cut("shank", "12.0 ± 0.6", trim("fat", "6.0 ± 0.5", "mince")),
                            cut(
                                    "topside",
                                    "20.5 ± 0.9",
                                    trim("fat", "4.0 ± 1.0", "mince"),
                                    trim("square off", "6.0 ± 1.0", "mince")),
                            cut("silverside", "21.0 ± 0.8", trim("fat", "5.0 ± 1.2", "mince")),
                            loss("drip", "0.5 ± 0.1"),
                            rest("mince")),
                    pair("loin", "21.5 ± 0.5", trim("tail", "9.0 ± 1.2", "mince"), loss("saw", "1.0 ± 0.3")),
                    pair(
                            "shoulder",
                            "27.4 ± 0.8",
                            bone("blade", "17.0 ± 0.5", "bones"),
                            cut("shoulder joint", "46.0 ± 2.0", trim("fat", "4.0 ± 1.0", "mince")),
                            loss("drip", "0.5 ± 0.1"),
                            rest("diced")),
                    cut("neck", "5.8 ± 0.3", bone("bones", "30.0 ± 2.0", "bones"), rest("diced")),
                    cut("breast", "11.8 ± 0.6"),
                    loss("drip", "0.5 ± 0.2")),
            String.valueOf((int) CARCASS));

    final Map<Integer, Double> kilograms = new TreeMap<>();
    final Map<Integer, Integer> times = new TreeMap<>();

    private WeighedHogget() {}

    static YieldPlan plan() {
        return EXPECTED.plan();
    }

    /** Carcass, trimmed cuts, trims, bones and rests; every other cut before it is divided. */
    static WeighedHogget drawn(long seed) {
        Random random = new Random(seed);
        WeighedHogget hogget = new WeighedHogget();
        double[] truth = truth(random);
        for (int v = 0; v < truth.length; v++) {
            boolean isWeighed =
                    v == 0 || (plan().isEnd(v) ? plan().node(v).kind() != Kind.LOSS : random.nextInt(3) > 0);
            if (isWeighed) {
                int often = truth[v] > 3 ? 2 : 1;
                double sd = Math.sqrt(scale(v).variance(truth[v], often));
                hogget.kilograms.put(v, truth[v] + sd * random.nextGaussian());
                hogget.times.put(v, often);
            }
        }
        return hogget;
    }

    private static double[] truth(Random random) {
        YieldPlan plan = plan();
        double[] truth = new double[plan.size()];
        truth[0] = CARCASS;
        for (int cut = 0; cut < plan.size(); cut++) {
            double left = 1;
            double others = 0;
            double[] share = new double[plan.size()];
            for (int part = plan.firstPart(cut); part < plan.firstPart(cut + 1); part++) {
                if (plan.node(part).kind() == Kind.LOSS) {
                    share[part] = plan.share(part) + Math.sqrt(plan.shareVariance(part)) * random.nextGaussian();
                    left -= share[part];
                } else {
                    share[part] = plan.share(part) * Math.exp(STRAY * random.nextGaussian());
                    others += share[part];
                }
            }
            for (int part = plan.firstPart(cut); part < plan.firstPart(cut + 1); part++) {
                boolean isLoss = plan.node(part).kind() == Kind.LOSS;
                truth[part] = truth[cut] * share[part] * (isLoss ? 1 : left / others);
            }
        }
        return truth;
    }

    private static Scale scale(int v) {
        return v == 0 ? RAIL : BENCH;
    }

    /** The nodes that lay on the bench. */
    List<Integer> onBench() {
        return kilograms.keySet().stream().filter(v -> v > 0).toList();
    }

    void stray(int node, double more) {
        kilograms.merge(node, more, Double::sum);
    }

    CuttingTest test() {
        List<PartReading> readings = new ArrayList<>();
        kilograms.forEach((v, weight) -> {
            Node node = plan().node(v);
            State state = node.kind() == Kind.TRIMMED ? State.TRIMMED : State.WHOLE;
            readings.add(new PartReading(node.path(), state, List.of(new Weighing(scale(v), weight, times.get(v)))));
        });
        return CuttingTest.of(EXPECTED, readings);
    }
}
