package dev.gambrel.yields.testedcuts;

import dev.gambrel.yields.houseshares.TableWorth;

/** Whether what is stated counts beside the tests. */
public sealed interface Prior {
    /** The tests alone. */
    record None() implements Prior {}

    /**
     * The stated shares count as so many tests, all parts alike, so that they close.
     *
     * @param worth how many tests, more than 0
     */
    record Stated(TableWorth worth) implements Prior {}
}
