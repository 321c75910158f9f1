package dev.gambrel.yields.cuttingtest.wording;

import dev.gambrel.yields.cuttingtest.CuttingTest;
import dev.gambrel.yields.cuttingtest.Verdict;
import dev.gambrel.yields.reconciliation.GlobalTest;

/** Whether a sheet adds up, in a sentence. */
public final class VerdictText {
    private VerdictText() {}

    /**
     * The verdict.
     *
     * @param verdict what was found of a sheet
     * @return for example "The sheet balances"
     */
    public static String words(Verdict verdict) {
        return switch (verdict) {
            case BALANCES -> "The sheet balances";
            case DOES_NOT_BALANCE -> "The sheet does not balance";
            case NOT_CHECKED -> "Nothing checks this sheet";
        };
    }

    /**
     * What the verdict rests on.
     *
     * @param test the sheet
     * @param verdict what was found of it
     * @return the end of a sentence
     */
    public static String evidence(CuttingTest test, Verdict verdict) {
        if (verdict == Verdict.NOT_CHECKED) {
            return "of no cut are its own weight and that of all its parts known.";
        }
        GlobalTest global = test.reconciled().test();
        if (global.degreesOfFreedom() == 0) {
            return "it needs no test of chance.";
        }
        return "chi-square " + Written.decimals(global.chiSquare(), 1) + " with " + global.degreesOfFreedom()
                + (global.degreesOfFreedom() == 1 ? " check" : " checks") + "; of sheets without a mistake "
                + Written.chance(global.probability()) + " fit no better.";
    }

    /**
     * The verdict with what it rests on.
     *
     * @param test the sheet
     * @param verdict what was found of it
     * @return one sentence
     */
    public static String of(CuttingTest test, Verdict verdict) {
        return words(verdict) + ": " + evidence(test, verdict);
    }
}
