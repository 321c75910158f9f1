package dev.gambrel.yields.reconciliation;

import dev.gambrel.yields.figure.Estimate;

/** What the other readings say of one. */
public sealed interface ReadingTest {
    /** There is no reading. */
    record NotWeighed() implements ReadingTest {}

    /** No other reading says anything of this weight: right or wrong, nothing shows it. */
    record NotChecked() implements ReadingTest {}

    /** The reading and all that it is cut into are said to be exact: it adds nothing, or contradicts them. */
    record SetAside() implements ReadingTest {}

    /**
     * Other readings check this one.
     *
     * @param error the reading less what all others say the weight is, with the standard deviation of that difference
     */
    record Checked(Estimate error) implements ReadingTest {
        /**
         * The standardised residual: (y - x)/sqrt(V - P), y the reading of variance V, x the reconciled weight of variance P (R. S. H. Mah
         * and A. C. Tamhane, "Detection of gross errors in process data", AIChE Journal 28, 1982). It is the error in standard deviations
         * too.
         *
         * @return standard normal if no reading is wrong
         */
        public double z() {
            return error.mean() / Math.sqrt(error.spread().variance());
        }

        /**
         * By how much the chi-square of the sheet falls if this reading is deleted (C. M. Crowe, "The maximum-power test for gross errors
         * in the original constraints in data reconciliation", Canadian Journal of Chemical Engineering 70, 1992).
         *
         * @return the square of {@link #z}
         */
        public double explained() {
            return z() * z();
        }
    }
}
