package dev.gambrel.yields.composition;

import dev.gambrel.yields.figure.JointEstimate;
import java.util.List;

/**
 * Compositions of the same parts, such as the shares of several cutting tests: where they lie and how they vary, by the ratios of
 * their parts. Raw shares are no measure of this, since what one gains others lose (K. Pearson, "On a form of spurious
 * correlation", Proceedings of the Royal Society of London 60, 1897).
 *
 * @param compositions 1 or more, all of as many parts
 */
public record CompositionSample(List<Composition> compositions) {
    /**
     * Copies the list and checks it.
     *
     * @throws IllegalArgumentException if there are none, or they have different numbers of parts
     */
    public CompositionSample {
        compositions = List.copyOf(compositions);
        if (compositions.stream().mapToInt(Composition::size).distinct().count() != 1) {
            throw new IllegalArgumentException("a sample has compositions of as many parts each");
        }
    }

    /**
     * How many parts each composition has.
     *
     * @return 2 or more
     */
    public int parts() {
        return compositions.get(0).size();
    }

    /**
     * Where they lie: the geometric mean of each part, closed. The mean of this space (J. Aitchison, The Statistical Analysis of
     * Compositional Data, 1986).
     *
     * @return the centre
     */
    public Composition centre() {
        return Composition.ofLogarithms(
                parts(),
                i -> compositions.stream()
                        .mapToDouble(each -> Math.log(each.share(i)))
                        .average()
                        .orElseThrow());
    }

    /**
     * How the ratio of each two parts varies: the variance of its logarithm, with n − 1 as divisor (Aitchison's variation
     * matrix).
     *
     * @return for each part one for each part; the same both ways, 0 for a part with itself
     * @throws IllegalStateException if there is only one composition
     */
    public double[][] variation() {
        double[][] variation = new double[parts()][parts()];
        for (int i = 0; i < parts(); i++) {
            for (int j = 0; j < i; j++) {
                variation[i][j] = varianceOfLogRatio(i, j);
                variation[j][i] = variation[i][j];
            }
        }
        return variation;
    }

    private double varianceOfLogRatio(int i, int j) {
        double[] ratios = compositions.stream()
                .mapToDouble(each -> Math.log(each.share(i)) - Math.log(each.share(j)))
                .toArray();
        double mean = 0;
        for (double ratio : ratios) {
            mean += ratio / ratios.length;
        }
        double squares = 0;
        for (double ratio : ratios) {
            squares += (ratio - mean) * (ratio - mean);
        }
        return squares / degrees();
    }

    /**
     * Their centred log-ratios: means, and how they vary together, with n − 1 as divisor.
     *
     * @return one figure for each part; they add up to 0
     * @throws IllegalStateException if there is only one composition
     */
    public JointEstimate logRatios() {
        double[] mean = centre().clr();
        double[][] covariance = new double[parts()][parts()];
        for (Composition each : compositions) {
            double[] clr = each.clr();
            for (int i = 0; i < clr.length; i++) {
                for (int j = 0; j < clr.length; j++) {
                    covariance[i][j] += (clr[i] - mean[i]) * (clr[j] - mean[j]) / degrees();
                }
            }
        }
        return JointEstimate.of(mean, covariance);
    }

    private int degrees() {
        if (compositions.size() < 2) {
            throw new IllegalStateException("one composition does not tell how they vary");
        }
        return compositions.size() - 1;
    }

    /**
     * How much they vary in all: the sum of the variation matrix over twice the number of parts. It is the mean square of the
     * distances from the centre, with n − 1 as divisor.
     *
     * @return 0 or more
     * @throws IllegalStateException if there is only one composition
     */
    public double totalVariance() {
        double sum = 0;
        for (double[] row : variation()) {
            for (double each : row) {
                sum += each;
            }
        }
        return sum / (2 * parts());
    }
}
