package dev.gambrel.yields.houseshares;

import dev.gambrel.text.TradeName;
import dev.gambrel.yields.composition.Composition;
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
    /**
     * Copies the lists and checks them.
     *
     * @throws IllegalArgumentException if there is no test, a part stands twice, a test has other parts, or a part weighs 0
     */
    public CutTests {
        parts = List.copyOf(parts);
        tests = List.copyOf(tests);
        if (tests.isEmpty() || new HashSet<>(parts).size() != parts.size()) {
            throw new IllegalArgumentException("1 test or more of parts that each stand once: " + parts);
        }
        for (CuttingTest test : tests) {
            if (test.weights().size() != parts.size()) {
                throw new IllegalArgumentException(
                        test.name() + " has " + test.weights().size() + " parts, not " + parts.size());
            }
        }
        List<PartOfNothing> nothing = PartOfNothing.among(parts, tests);
        if (!nothing.isEmpty()) {
            throw new IllegalArgumentException(
                    nothing.get(0).part() + " weighs 0 in " + nothing.get(0).test());
        }
    }

    /**
     * The shares of each test.
     *
     * @return one for each test, in order
     */
    public List<Composition> compositions() {
        return tests.stream().map(test -> composition(test)).toList();
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
