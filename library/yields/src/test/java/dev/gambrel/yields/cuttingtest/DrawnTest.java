package dev.gambrel.yields.cuttingtest;

import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.Sheet;
import dev.gambrel.yields.plan.Kind;
import dev.gambrel.yields.plan.Node;
import dev.gambrel.yields.plan.YieldPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Sheets of a hogget of 22 kg drawn for the laws: the shares of its specification, a bench scale in steps of 5 g, some parts not weighed. */
final class DrawnTest {
    private static final Scale BENCH = new Scale("bench", 0.005, 0, 0.002);

    private DrawnTest() {}

    static ExpectedYields expected(CutTree tree) {
        return Sheet.yields(tree, "22");
    }

    /** The carcass and so many of the parts, with the errors of the scale. */
    static CuttingTest of(CutTree tree, long seed, double ofParts) {
        return of(tree, new Random(seed), ofParts, 1);
    }

    /** Everything weighed, just as expected. */
    static CuttingTest asExpected(CutTree tree) {
        return of(tree, new Random(1), 1, 0);
    }

    private static CuttingTest of(CutTree tree, Random random, double ofParts, double ofError) {
        ExpectedYields expected = expected(tree);
        YieldPlan plan = expected.plan();
        List<PartReading> readings = new ArrayList<>();
        for (int v = 0; v < plan.size(); v++) {
            double error = ofError * Math.sqrt(BENCH.variance(0, 1)) * random.nextGaussian();
            if (v == 0 || random.nextDouble() < ofParts) {
                readings.add(reading(plan.node(v), 22 * plan.mean(v) + error));
            }
        }
        return CuttingTest.of(expected, readings);
    }

    private static PartReading reading(Node node, double kilograms) {
        return new PartReading(
                node.path(),
                node.kind() == Kind.TRIMMED ? PartReading.State.TRIMMED : PartReading.State.WHOLE,
                List.of(new Weighing(BENCH, kilograms, 1)));
    }
}
