package dev.gambrel.reports.picture;

import dev.gambrel.yields.control.Contribution;
import dev.gambrel.yields.control.Signal;
import dev.gambrel.yields.cuttingtest.wording.Written;
import java.util.List;

/** What a signal says, in a sentence. */
public final class SignalText {
    private static final String LOOK = " Chance hardly makes that; look for what changed.";

    private SignalText() {}

    /**
     * Says a signal.
     *
     * @param signal of a chart
     * @param labels of its tests
     * @param unit what its figures are
     * @return the sentence, which begins with the number of the test
     */
    public static String of(Signal signal, List<String> labels, ChartUnit unit) {
        String test = name(signal.index(), labels);
        if (signal instanceof Signal.Above above) {
            return test + " is at " + figure(above.plotted(), unit) + ", above the limit of "
                    + figure(above.limit(), unit) + "." + LOOK;
        } else if (signal instanceof Signal.Below below) {
            return test + " is at " + figure(below.plotted(), unit) + ", below the limit of "
                    + figure(below.limit(), unit) + "." + LOOK;
        } else if (signal instanceof Signal.Risen risen) {
            return test + ": since " + name(risen.since(), labels) + " the tests are " + figure(risen.sum(), unit)
                    + " above the aim together, and " + figure(risen.limit(), unit) + " is the limit." + LOOK;
        } else if (signal instanceof Signal.Sunk sunk) {
            return test + ": since " + name(sunk.since(), labels) + " the tests are " + figure(sunk.sum(), unit)
                    + " below the aim together, and " + figure(sunk.limit(), unit) + " is the limit." + LOOK;
        }
        Signal.OutOfShape shape = (Signal.OutOfShape) signal;
        return test + " is at " + figure(shape.squared(), unit) + ", above the limit of " + figure(shape.limit(), unit)
                + most(shape.contributions()) + "." + LOOK;
    }

    private static String most(List<Contribution> contributions) {
        return contributions.isEmpty()
                ? ""
                : ", most by " + contributions.get(0).words() + " (z "
                        + Written.deviations(contributions.get(0).deviations()) + ")";
    }

    private static String name(int test, List<String> labels) {
        return "Test " + (test + 1) + ", " + labels.get(test);
    }

    private static String figure(double value, ChartUnit unit) {
        return Written.decimals(value, unit.decimals());
    }
}
