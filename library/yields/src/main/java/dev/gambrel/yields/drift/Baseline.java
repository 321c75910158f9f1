package dev.gambrel.yields.drift;

import dev.gambrel.yields.control.ChartAnswer;
import dev.gambrel.yields.control.ChartAnswer.Drawn;
import dev.gambrel.yields.control.EwmaChart;
import dev.gambrel.yields.control.IndividualsChart;
import dev.gambrel.yields.control.ProcessLevel;
import java.util.List;
import java.util.function.Function;

/** Which tests say where a share lies and how far it strays while nothing changes. */
public sealed interface Baseline {
    /** All tests that there are: for a first look. A test that is far off widens its own limits. */
    record AllTests() implements Baseline {}

    /**
     * The first tests, against which the later ones are held.
     *
     * @param tests how many, {@link ChartAnswer#FEWEST} or more
     */
    record FirstTests(int tests) implements Baseline {
        /**
         * Checks the number.
         *
         * @throws IllegalArgumentException if there are fewer
         */
        public FirstTests {
            if (tests < ChartAnswer.FEWEST) {
                throw new IllegalArgumentException(
                        "a level wants " + ChartAnswer.FEWEST + " tests or more, not " + tests);
            }
        }
    }

    /**
     * How many of so many tests are the baseline.
     *
     * @param tests how many there are
     * @return as many or fewer
     */
    default int of(int tests) {
        return this instanceof FirstTests first ? Math.min(first.tests(), tests) : tests;
    }

    /**
     * The chart of single figures, for large and sudden changes.
     *
     * @param values in the order of time, 1 or more
     * @return the chart; or why there is none
     */
    default ChartAnswer single(List<Double> values) {
        return chart(values, level -> new Drawn(IndividualsChart.of(values, level)));
    }

    /**
     * The chart of their moving average, for small changes that last.
     *
     * @param values in the order of time, 1 or more
     * @return the chart; or why there is none
     */
    default ChartAnswer average(List<Double> values) {
        return chart(values, level -> new Drawn(EwmaChart.of(values, EwmaChart.USUAL, level)));
    }

    private ChartAnswer chart(List<Double> values, Function<ProcessLevel, ChartAnswer> against) {
        ChartAnswer own = IndividualsChart.of(values.subList(0, of(values.size())));
        return own instanceof Drawn drawn ? against.apply(drawn.chart().level()) : own;
    }
}
