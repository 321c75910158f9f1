package dev.gambrel.yields.cuttingtest;

/** Whether a sheet adds up, by the errors that its scales and its losses are said to have. */
public enum Verdict {
    /** Nothing on it contradicts anything else. */
    BALANCES,
    /** Something on it is wrong. */
    DOES_NOT_BALANCE,
    /** Of no cut are both itself and all its parts known: right or wrong, nothing shows it. */
    NOT_CHECKED;

    /**
     * Judges a sheet: as a whole, cut by cut and reading by reading.
     *
     * @param test the sheet
     * @param level the chance that each of these finds fault with a sheet where nothing is wrong, such as 0.05
     * @return what is to be said of it
     */
    public static Verdict of(CuttingTest test, double level) {
        boolean isWrong = test.reconciled().test().probability() < level
                || !test.suspects(level).found().isEmpty()
                || !test.moreOutThanIn(level).isEmpty()
                || !test.reconciled().contradictions().isEmpty();
        if (isWrong) {
            return DOES_NOT_BALANCE;
        }
        return test.reconciled().test().degreesOfFreedom() == 0 ? NOT_CHECKED : BALANCES;
    }
}
