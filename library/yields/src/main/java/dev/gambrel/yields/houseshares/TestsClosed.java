package dev.gambrel.yields.houseshares;

import dev.gambrel.text.TradeName;
import dev.gambrel.yields.figure.JointEstimate;
import java.util.Arrays;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/**
 * Whether cutting tests can be taken together. Where some carcasses give a part and others do not, they were cut in two ways, and
 * each way has shares of its own: a part of nothing is no small part.
 */
public sealed interface TestsClosed {
    /** What stands for a part too light for the scale, as a share of the scale's division. */
    double OF_DIVISION = 0.65;

    /**
     * Takes tests together that all gave every part.
     *
     * @param parts the names of the parts
     * @param tests tests of these parts, in this order
     * @return the tests; or which parts some did not give
     * @throws IllegalArgumentException as {@link CutTests}
     */
    static TestsClosed of(List<TradeName> parts, List<CuttingTest> tests) {
        List<PartOfNothing> nothing = PartOfNothing.among(parts, tests);
        return nothing.isEmpty() ? new Together(new CutTests(parts, tests), List.of(), 0) : new TwoWays(nothing);
    }

    /**
     * Takes tests together in which a part was there and too light for the scale. It is put at 65 % of the scale's division and the
     * other parts are lessened in proportion, so that the whole stays and so do their ratios (multiplicative replacement: J. A.
     * Martín-Fernández, C. Barceló-Vidal and V. Pawlowsky-Glahn, "Dealing with zeros and missing values in compositional data sets",
     * Mathematical Geology 35, 2003).
     *
     * @param parts the names of the parts
     * @param tests tests of these parts, in this order
     * @param division the smallest step of the scale, kilograms, more than 0
     * @return the tests and what was replaced; or the parts that no test gave
     * @throws IllegalArgumentException if the division is no weight, or it is too coarse for a test, or as {@link CutTests}
     */
    static TestsClosed of(List<TradeName> parts, List<CuttingTest> tests, double division) {
        if (!(division > 0 && Double.isFinite(division))) {
            throw new IllegalArgumentException("a scale has a division of more than 0 kg, not " + division);
        }
        List<PartOfNothing> nothing = PartOfNothing.among(parts, tests);
        Set<TradeName> given = new HashSet<>();
        for (CuttingTest test : tests) {
            for (int i = 0; i < parts.size(); i++) {
                if (test.weights().mean(i) > 0) {
                    given.add(parts.get(i));
                }
            }
        }
        List<PartOfNothing> never =
                nothing.stream().filter(each -> !given.contains(each.part())).toList();
        double kilograms = OF_DIVISION * division;
        return never.isEmpty()
                ? new Together(
                        new CutTests(
                                parts,
                                tests.stream()
                                        .map(test -> replaced(test, kilograms))
                                        .toList()),
                        nothing,
                        nothing.isEmpty() ? 0 : kilograms)
                : new TwoWays(never);
    }

    private static CuttingTest replaced(CuttingTest test, double kilograms) {
        int parts = test.weights().size();
        double[] weights = new double[parts];
        Arrays.setAll(weights, i -> test.weights().mean(i));
        double put =
                kilograms * Arrays.stream(weights).filter(each -> each == 0).count();
        double left = 1 - put / test.kilograms();
        if (!(left > 0)) {
            throw new IllegalArgumentException("the scale is too coarse for " + test.name());
        }
        double[] closed = Arrays.stream(weights)
                .map(each -> each == 0 ? kilograms : each * left)
                .toArray();
        double[][] gradients = new double[parts][parts];
        for (int i = 0; i < parts; i++) {
            gradients[i][i] = weights[i] == 0 ? 1 : left;
        }
        JointEstimate estimate = test.weights().propagated(closed, gradients);
        return new CuttingTest(test.name(), estimate, test.counts());
    }

    /**
     * All tests gave every part.
     *
     * @param tests the tests
     * @param replaced the parts that were too light for the scale; say so beside every figure
     * @param kilograms what was put for each of them, 0 where there is none
     */
    record Together(CutTests tests, List<PartOfNothing> replaced, double kilograms) implements TestsClosed {
        /** Copies the list. */
        public Together {
            replaced = List.copyOf(replaced);
        }
    }

    /**
     * Some tests did not give every part: the cut was worked in another way there.
     *
     * @param nothing the parts and the tests that did not give them, 1 or more
     */
    record TwoWays(List<PartOfNothing> nothing) implements TestsClosed {
        /** Copies the list. */
        public TwoWays {
            nothing = List.copyOf(nothing);
        }
    }
}
