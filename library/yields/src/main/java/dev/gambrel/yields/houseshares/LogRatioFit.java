package dev.gambrel.yields.houseshares;

import dev.gambrel.yields.composition.Composition;
import dev.gambrel.yields.figure.JointEstimate;
import java.util.Arrays;
import java.util.List;

/** Centred log-ratios of tests: their mean and the squares about it; and what a table makes of them. */
final class LogRatioFit {
    private final CutTests tests;
    private final double number;
    private final double[] mean;
    private final double[][] squares;

    LogRatioFit(CutTests tests) {
        this.tests = tests;
        this.number = tests.effectiveNumber();
        int parts = tests.parts().size();
        this.mean = new double[parts];
        this.squares = new double[parts][parts];
        List<double[]> logRatios =
                tests.compositions().stream().map(Composition::clr).toList();
        double[] counts = tests.counts();
        for (int t = 0; t < counts.length; t++) {
            for (int i = 0; i < parts; i++) {
                mean[i] += counts[t] / number * logRatios.get(t)[i];
            }
        }
        for (int t = 0; t < counts.length; t++) {
            addSquare(squares, counts[t], gap(logRatios.get(t), mean));
        }
    }

    LogRatioShares alone() {
        double freedom = number - 1;
        return isOne() ? centre(mean) : model(mean, times(squares, 1 / freedom), number, freedom);
    }

    LogRatioShares with(Shrinkage table) {
        PublishedShares published = table.published();
        if (published.shares().size() != mean.length) {
            throw new IllegalArgumentException(
                    mean.length + " parts, and " + published.shares().size() + " published");
        }
        double worth = table.worth().tests();
        double own = table.worth().ownWeight(number);
        double[] prior = published.means().clr();
        double[] drawn = new double[mean.length];
        Arrays.setAll(drawn, i -> own * mean[i] + (1 - own) * prior[i]);
        boolean tells = worth > 0 && published.tellsSpreads();
        if (isOne() && !tells) {
            return centre(drawn);
        }
        double freedom = number - 1 + (tells ? worth : 0);
        double[][] sum = times(squares, 1 / freedom);
        addSquare(sum, number * (1 - own) / freedom, gap(mean, prior));
        double[][] covariance = tells ? sum(sum, 1 - table.worth().ownWeight(number - 1), published.logRatios()) : sum;
        return model(drawn, covariance, number + worth, freedom);
    }

    private boolean isOne() {
        return tests.tests().size() < 2;
    }

    private static Composition composition(double[] logRatios) {
        double largest = Arrays.stream(logRatios).max().orElseThrow();
        return Composition.of(
                Arrays.stream(logRatios).map(each -> Math.exp(each - largest)).toArray());
    }

    private LogRatioShares centre(double[] at) {
        return new LogRatioCentre(tests.parts(), composition(at));
    }

    private LogRatioShares model(double[] at, double[][] covariance, double restsOn, double freedom) {
        return new LogRatioModel(
                tests.parts(),
                tests.tests().size(),
                composition(at),
                JointEstimate.of(at, covariance),
                restsOn,
                freedom);
    }

    private static double[] gap(double[] one, double[] other) {
        double[] gap = new double[one.length];
        Arrays.setAll(gap, i -> one[i] - other[i]);
        return gap;
    }

    private static void addSquare(double[][] sum, double factor, double[] vector) {
        for (int i = 0; i < vector.length; i++) {
            for (int j = 0; j < vector.length; j++) {
                sum[i][j] += factor * (vector[i] * vector[j]);
            }
        }
    }

    private static double[][] times(double[][] matrix, double factor) {
        return Arrays.stream(matrix)
                .map(row -> Arrays.stream(row).map(each -> each * factor).toArray())
                .toArray(double[][]::new);
    }

    private static double[][] sum(double[][] matrix, double factor, JointEstimate other) {
        double[][] sum = times(matrix, 1);
        for (int i = 0; i < sum.length; i++) {
            for (int j = 0; j < sum.length; j++) {
                sum[i][j] += factor * other.covariance(i, j).orElseThrow();
            }
        }
        return sum;
    }
}
