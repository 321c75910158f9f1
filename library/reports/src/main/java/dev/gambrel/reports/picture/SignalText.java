package dev.gambrel.reports.picture;

import dev.gambrel.yields.control.Contribution;
import dev.gambrel.yields.control.Signal;
import dev.gambrel.yields.cuttingtest.wording.Written;
import java.util.List;

/** What a signal says, in a sentence. */
public final class SignalText {
    private static final int MOST_DECIMALS = 9;
    private static final String LOOK = " Look for what changed.";

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
            return test + " is at " + beyond(above.plotted(), "above", above.limit(), unit) + "." + LOOK;
        } else if (signal instanceof Signal.Below below) {
            return test + " is at " + beyond(below.plotted(), "below", below.limit(), unit) + "." + LOOK;
        } else if (signal instanceof Signal.Risen risen) {
            return test + ": since " + name(risen.since(), labels) + " the tests together are above the aim by "
                    + beyond(risen.sum(), "above", risen.limit(), unit) + "." + LOOK;
        } else if (signal instanceof Signal.Sunk sunk) {
            return test + ": since " + name(sunk.since(), labels) + " the tests together are below the aim by "
                    + beyond(sunk.sum(), "above", sunk.limit(), unit) + "." + LOOK;
        }
        Signal.OutOfShape shape = (Signal.OutOfShape) signal;
        return test + " is at " + beyond(shape.squared(), "above", shape.limit(), unit) + most(shape.contributions())
                + "." + LOOK;
    }

    /** With as many decimals as it takes to tell the figure from its limit. */
    private static String beyond(double figure, String side, double limit, ChartUnit unit) {
        int decimals = unit.decimals();
        while (decimals < MOST_DECIMALS
                && Written.decimals(figure, decimals).equals(Written.decimals(limit, decimals))) {
            decimals++;
        }
        return Written.decimals(figure, decimals) + ", " + side + " the limit of " + Written.decimals(limit, decimals);
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
}
