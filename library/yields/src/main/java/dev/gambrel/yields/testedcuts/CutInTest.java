package dev.gambrel.yields.testedcuts;

import dev.gambrel.yields.figure.JointEstimate;
import dev.gambrel.yields.plan.Kind;
import dev.gambrel.yields.plan.YieldPlan;
import dev.gambrel.yields.reconciliation.Reconciled;
import dev.gambrel.yields.reconciliation.Reconciliation;
import java.util.List;
import java.util.OptionalDouble;

/**
 * A cut in one test.
 *
 * @param test the test
 * @param cut its line of the plan
 * @param parts the lines of its parts
 * @param sheet the test in balance by its weighings alone
 */
record CutInTest(NamedTest test, int cut, List<Integer> parts, Reconciliation sheet) {
    private YieldPlan plan() {
        return test.test().plan();
    }

    List<TestedPart> tested(List<Integer> lines) {
        return lines.stream().map(part -> TestedPart.of(plan(), part)).toList();
    }

    boolean isLoss(int part) {
        return plan().node(part).kind() == Kind.LOSS;
    }

    boolean isStated(int part) {
        return plan().isShareStated(part);
    }

    boolean isWeighed(int part) {
        return test.test().reading(part).isPresent();
    }

    boolean isKnown(int part) {
        return sheet.weight(part) instanceof Reconciled.Weight;
    }

    String name(int part) {
        return plan().node(part).name();
    }

    double kilograms(int part) {
        return ((Reconciled.Weight) sheet.weight(part)).estimate().mean();
    }

    JointEstimate together(List<Integer> lines) {
        return Siblings.of(sheet, lines);
    }

    /** What is missing of the cut, a part of 1. */
    OptionalDouble missing(List<Integer> found) {
        boolean isTold = isKnown(cut) && kilograms(cut) > 0;
        return isTold
                ? OptionalDouble.of(
                        1 - found.stream().mapToDouble(this::kilograms).sum() / kilograms(cut))
                : OptionalDouble.empty();
    }
}
