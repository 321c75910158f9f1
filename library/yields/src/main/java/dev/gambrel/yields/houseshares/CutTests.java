package dev.gambrel.yields.houseshares;

import dev.gambrel.text.TradeName;
import dev.gambrel.yields.composition.Composition;
import java.util.DoubleSummaryStatistics;
import java.util.HashSet;
import java.util.List;

/**
 * Cutting tests of one cut that was worked in one way each time, so that every test gave every part. {@link TestsClosed} makes them
 * of tests as they come. Their order makes no difference to any figure beyond the last digits.
 *
 * @param parts the names of the parts, 2 or more, each once
 * @param tests 1 or more, with a weight above 0 for each part
 */
public record CutTests(List<TradeName> parts, List<CuttingTest> tests) {
    /** How little a test may count beside another. */
    public static final double LEAST = 0.001;

    /**
     * Copies the lists and checks them.
     *
     * @throws IllegalArgumentException if there is no test, a part stands twice, a test has other parts, a part weighs 0, or
     *     a test counts less than {@link #LEAST} of another
     */
    public CutTests {
        parts = List.copyOf(parts);
        tests = List.copyOf(tests);
        if (tests.isEmpty() || new HashSet<>(parts).size() != parts.size()) {
            throw new IllegalArgumentException("1 test or more of parts that each stand once: " + parts);
        }
        List<PartOfNothing> nothing = PartOfNothing.among(parts, tests);
        if (!nothing.isEmpty()) {
            throw new IllegalArgumentException(
                    nothing.get(0).part() + " weighs 0 in " + nothing.get(0).test());
        }
        DoubleSummaryStatistics counts =
                tests.stream().mapToDouble(CuttingTest::counts).summaryStatistics();
        if (counts.getMin() < LEAST * counts.getMax()) {
            throw new IllegalArgumentException(
                    "a test counts " + counts.getMin() + " where another counts " + counts.getMax() + ": leave it out");
        }
    }

    /**
     * The shares of each test.
     *
     * @return one for each test, in order
     */
    public List<Composition> compositions() {
        return tests.stream().map(this::composition).toList();
    }

    private Composition composition(CuttingTest test) {
        double[] kilograms = new double[parts.size()];
        for (int i = 0; i < kilograms.length; i++) {
            kilograms[i] = test.weights().mean(i);
        }
        return Composition.of(kilograms);
    }

    /**
     * How many tests that all count alike would say as much: (Σc)² / Σc² (L. Kish, Survey Sampling, Wiley, 1965, from memory).
     *
     * @return from 1 to the number of tests; that number where all count alike
     */
    public double effectiveNumber() {
        double sum = 0;
        double squares = 0;
        double most = tests.stream().mapToDouble(CuttingTest::counts).max().orElseThrow();
        for (CuttingTest test : tests) {
            double counts = test.counts() / most;
            sum += counts;
            squares += counts * counts;
        }
        return sum * sum / squares;
    }

    /** What each test counts, together as many as {@link #effectiveNumber}. */
    double[] counts() {
        double sum = tests.stream().mapToDouble(CuttingTest::counts).sum();
        double number = effectiveNumber();
        return tests.stream().mapToDouble(test -> test.counts() / sum * number).toArray();
    }
}
