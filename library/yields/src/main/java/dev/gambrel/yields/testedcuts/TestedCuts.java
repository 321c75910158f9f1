package dev.gambrel.yields.testedcuts;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.plan.Kind;
import dev.gambrel.yields.plan.YieldPlan;
import dev.gambrel.yields.reconciliation.Reconciliation;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;

/**
 * The cuts of a specification with what several cutting tests say of them.
 *
 * <p>Weights are those of the tests in balance by their weighings alone ({@link
 * dev.gambrel.yields.cuttingtest.CuttingTest#asWeighed}), so that no share rests on what it is compared with.
 *
 * @param cuts every cut that a test has divided or trimmed, the carcass first, each before what is cut from it
 */
public record TestedCuts(List<TestedCut> cuts) {
    /** Copies the list. */
    public TestedCuts {
        cuts = List.copyOf(cuts);
    }

    /**
     * Looks at every cut. O(lines of all tests).
     *
     * @param tree the specification that all tests are of
     * @param tests 1 or more, each of another name
     * @return its cuts; those that are worked in several ways stand for none, their ways do
     */
    public static TestedCuts of(CutTree tree, List<NamedTest> tests) {
        WaysInTree ways = WaysInTree.of(tree);
        Map<TreePath, List<CutInTest>> cuts = new LinkedHashMap<>();
        for (NamedTest test : tests) {
            Walk walk = new Walk(test, test.test().asWeighed(), ways, cuts);
            walk.down(test.test().plan().carcass());
        }
        return new TestedCuts(cuts.entrySet().stream()
                .map(each -> Gathering.of(each.getKey(), each.getValue()))
                .toList());
    }

    /** Goes down the cuts of one test. */
    private record Walk(NamedTest test, Reconciliation sheet, WaysInTree ways, Map<TreePath, List<CutInTest>> cuts) {
        void down(int cut) {
            YieldPlan plan = test.test().plan();
            List<Integer> parts = IntStream.range(plan.firstPart(cut), plan.firstPart(cut + 1))
                    .boxed()
                    .toList();
            TreePath path = plan.node(cut).path();
            if (parts.size() > 1 && !ways.isWorkedInWays(path)) {
                cuts.computeIfAbsent(path, any -> new ArrayList<>()).add(new CutInTest(test, cut, parts, sheet));
            }
            parts.stream().filter(part -> plan.node(part).kind() == Kind.CUT).forEach(this::down);
        }
    }
}
