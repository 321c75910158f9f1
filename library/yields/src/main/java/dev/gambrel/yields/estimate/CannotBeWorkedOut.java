package dev.gambrel.yields.estimate;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.text.TradeName;

/** Arithmetic that ends without a result. Never leaves the package. */
abstract sealed class CannotBeWorkedOut extends Exception {
    private static final long serialVersionUID = 1;

    private CannotBeWorkedOut() {
        super("", null, false, false);
    }

    /** The same as a finding about an estimate. */
    abstract Diagnostic finding(TradeName estimate);

    /** Something is divided by nothing. */
    static final class DividedByNothing extends CannotBeWorkedOut {
        private static final long serialVersionUID = 1;

        @Override
        Diagnostic finding(TradeName estimate) {
            return Diagnostic.of(MeasurementCode.DIVIDED_BY_NOTHING, ReadingCheck.PLACE)
                    .with("estimate", estimate)
                    .help("Look whether a reading was given as 0.");
        }
    }

    /** Figures grow too long. */
    static final class TooLong extends CannotBeWorkedOut {
        private static final long serialVersionUID = 1;

        @Override
        Diagnostic finding(TradeName estimate) {
            return Working.tooLong(estimate);
        }
    }
}
