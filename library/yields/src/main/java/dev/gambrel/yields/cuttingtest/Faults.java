package dev.gambrel.yields.cuttingtest;

import dev.gambrel.yields.reconciliation.CutBalance;
import dev.gambrel.yields.reconciliation.error.Suspects;
import dev.gambrel.yields.reconciliation.pattern.Explanation;
import java.util.List;

/**
 * What speaks against a sheet. It is looked at in five ways: as a whole, cut by cut and reading by reading, for more out than in, for
 * parts that would weigh less than nothing, and for mistakes with a pattern. Each is given a fifth of the chance of a false alarm, so that all
 * together keep to it (C. E. Bonferroni's
 * inequality).
 *
 * @param verdict whether the sheet adds up
 * @param suspects the smallest sets of readings that may be wrong
 * @param moreOutThanIn cuts that gave more than they weighed, even if nothing was lost; in the order of the plan
 * @param belowNothing parts that are no loss and would weigh less than nothing in balance; in the order of the plan
 * @param explanations mistakes with a pattern that the sheet speaks for, the one that explains most first
 */
public record Faults(
        Verdict verdict,
        Suspects suspects,
        List<CutBalance> moreOutThanIn,
        List<Integer> belowNothing,
        List<Explanation> explanations) {
    private static final double WAYS = 5;

    /** Copies the lists. */
    public Faults {
        moreOutThanIn = List.copyOf(moreOutThanIn);
        belowNothing = List.copyOf(belowNothing);
        explanations = List.copyOf(explanations);
    }

    /**
     * Looks for what is wrong with a sheet.
     *
     * @param test the sheet
     * @param level the chance that anything is said against a sheet where nothing is wrong, such as 0.05
     * @return what speaks against it
     */
    public static Faults of(CuttingTest test, double level) {
        double each = level / WAYS;
        Suspects suspects = test.suspects(each);
        List<CutBalance> more = test.moreOutThanIn(each);
        List<Integer> belowNothing = test.belowNothing(each);
        List<Explanation> explanations = test.explanations(each);
        boolean isWrong = test.reconciled().test().probability() < each
                || !suspects.found().isEmpty()
                || !more.isEmpty()
                || !belowNothing.isEmpty()
                || !explanations.isEmpty()
                || !test.reconciled().contradictions().isEmpty();
        return new Faults(verdict(test, isWrong), suspects, more, belowNothing, explanations);
    }

    private static Verdict verdict(CuttingTest test, boolean isWrong) {
        if (isWrong) {
            return Verdict.DOES_NOT_BALANCE;
        }
        return test.reconciled().test().degreesOfFreedom() == 0 ? Verdict.NOT_CHECKED : Verdict.BALANCES;
    }
}
