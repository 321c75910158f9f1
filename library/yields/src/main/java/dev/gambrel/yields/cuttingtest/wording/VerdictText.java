package dev.gambrel.yields.cuttingtest.wording;

import dev.gambrel.yields.cuttingtest.CuttingTest;
import dev.gambrel.yields.cuttingtest.Verdict;
import dev.gambrel.yields.reconciliation.GlobalTest;

/** Whether a sheet adds up, in a sentence. */
public final class VerdictText {
    private VerdictText() {}

    /**
     * The verdict with its evidence.
     *
     * @param test the sheet
     * @param verdict what was found of it
     * @return one sentence
     */
    public static String of(CuttingTest test, Verdict verdict) {
        return switch (verdict) {
            case BALANCES -> "The sheet balances: " + evidence(test.reconciled().test());
            case DOES_NOT_BALANCE ->
                "The sheet does not balance: " + evidence(test.reconciled().test());
            case NOT_CHECKED ->
                "Nothing checks this sheet: of no cut are its own weight and that of all its parts known.";
        };
    }

    private static String evidence(GlobalTest test) {
        return "chi-square " + Written.decimals(test.chiSquare(), 1) + " with " + test.degreesOfFreedom()
                + (test.degreesOfFreedom() == 1 ? " check" : " checks") + "; of sheets without a mistake "
                + Written.chance(test.probability()) + " fit no better.";
    }
}
