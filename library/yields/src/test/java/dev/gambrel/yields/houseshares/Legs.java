package dev.gambrel.yields.houseshares;

import dev.gambrel.text.TradeName;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Spread;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;

/** Cutting tests of legs, for tests. */
final class Legs {
    private Legs() {}

    static List<TradeName> parts(int number) {
        List<TradeName> parts = new ArrayList<>();
        for (int i = 0; i < number; i++) {
            parts.add(TradeName.of("part " + (char) ('a' + i)));
        }
        return parts;
    }

    static CutTests tests(double[]... kilograms) {
        return new CutTests(parts(kilograms[0].length), list(kilograms));
    }

    static List<CuttingTest> list(double[]... kilograms) {
        List<CuttingTest> tests = new ArrayList<>();
        for (double[] each : kilograms) {
            tests.add(CuttingTest.of("test " + (tests.size() + 1), each));
        }
        return tests;
    }

    /** The three tests of the check of one weight for all parts. */
    static CutTests three() {
        return tests(
                new double[] {0.345, 0.262, 0.215, 0.178},
                new double[] {0.338, 0.271, 0.214, 0.177},
                new double[] {0.351, 0.258, 0.217, 0.174});
    }

    static PublishedShares published(double[] means, double... deviations) {
        List<Estimate> shares = new ArrayList<>();
        for (int i = 0; i < means.length; i++) {
            Spread spread = deviations.length == 0 ? Spread.NOT_STATED : new Spread.Stated(deviations[i]);
            shares.add(new Estimate(means[i], spread));
        }
        return new PublishedShares(shares);
    }

    static double[] shares(ExpectedShares expected) {
        return expected.parts().stream().mapToDouble(ExpectedShare::share).toArray();
    }

    static double[] spreads(ExpectedShares expected) {
        return expected.parts().stream()
                .mapToDouble(part -> Math.sqrt(part.betweenCarcasses().variance()))
                .toArray();
    }

    static double[] doubts(ExpectedShares expected) {
        return expected.parts().stream()
                .mapToDouble(part -> Math.sqrt(part.ofMean().variance()))
                .toArray();
    }

    static double[][] rows(List<List<Double>> rows) {
        return rows.stream()
                .map(row -> row.stream().mapToDouble(Double::doubleValue).toArray())
                .toArray(double[][]::new);
    }

    static double[] times(double factor, double[] row) {
        return Arrays.stream(row).map(each -> factor * each).toArray();
    }
}
