package dev.gambrel.yields.cuttingtest;

/** Whether a sheet adds up, by the errors that its scales and its losses are said to have. */
public enum Verdict {
    /** Nothing on it contradicts anything else. */
    BALANCES,
    /** Something on it is wrong. */
    DOES_NOT_BALANCE,
    /** Of no cut are both itself and all its parts known: right or wrong, nothing shows it. */
    NOT_CHECKED
}
