package dev.gambrel.yields.drift;

import dev.gambrel.yields.control.ChartAnswer;
import dev.gambrel.yields.control.ChartAnswer.Drawn;
import dev.gambrel.yields.control.EwmaChart;
import dev.gambrel.yields.control.IndividualsChart;
import dev.gambrel.yields.control.ProcessLevel;
import java.util.List;
import java.util.function.Function;
import org.apache.commons.statistics.distribution.TDistribution;

/** Which tests say where a share lies and how far it strays while nothing changes. */
public sealed interface Baseline {
    /** Degrees of freedom of a mean moving range, to each range. */
    double FREEDOM = 0.62;

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
     * How often a test that came after passes limits of 3 standard deviations that rest on so many first tests, while nothing changes. The
     * mean of those is off itself, and a mean range of neighbours tells the standard deviation about as well as 0.62 (n − 1) degrees of
     * freedom (from memory), so it is Student's t.
     *
     * @param first how many tests set the level
     * @param lambda of the average; 0 for single tests
     * @return from 0 to 1, above what is drawn by up to a half for 8 tests, and less for more
     */
    static double passedByChance(int first, double lambda) {
        double spread = lambda == 0 ? 1 : lambda / (2 - lambda);
        double ofLevel = 1.0 / first / spread;
        double limit = IndividualsChart.LIMITS / Math.sqrt(1 + ofLevel);
        return 2 * TDistribution.of(FREEDOM * (first - 1)).survivalProbability(limit);
    }

    /** The chart of single figures. */
    default ChartAnswer single(List<Double> values) {
        return chart(values, level -> new Drawn(IndividualsChart.of(values, level)));
    }

    /** The chart of their moving average. */
    default ChartAnswer average(List<Double> values) {
        return chart(values, level -> new Drawn(EwmaChart.of(values, EwmaChart.USUAL, level)));
    }

    private ChartAnswer chart(List<Double> values, Function<ProcessLevel, ChartAnswer> against) {
        ChartAnswer own = IndividualsChart.of(values.subList(0, of(values.size())));
        return own instanceof Drawn drawn ? against.apply(drawn.chart().level()) : own;
    }
}
