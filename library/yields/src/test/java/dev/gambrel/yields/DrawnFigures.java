package dev.gambrel.yields;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.yields.figure.JointEstimate;
import java.util.function.Supplier;

/** Means and covariances of drawn figures, about the exact means, to hold the exact ones against. */
final class DrawnFigures {
    private final JointEstimate exact;
    private final double[] sum;
    private final double[][] products;
    private final int draws;

    private DrawnFigures(JointEstimate exact, int draws) {
        this.exact = exact;
        this.sum = new double[exact.size()];
        this.products = new double[exact.size()][exact.size()];
        this.draws = draws;
    }

    /** Tolerances are 4 standard errors of what is drawn; that of a covariance is √((σ²τ² + γ²) / N). */
    static void assertAgree(JointEstimate exact, int draws, Supplier<double[]> draw) {
        DrawnFigures drawn = new DrawnFigures(exact, draws);
        for (int i = 0; i < draws; i++) {
            drawn.add(draw.get());
        }
        drawn.check();
    }

    private void add(double[] figures) {
        for (int a = 0; a < sum.length; a++) {
            sum[a] += figures[a] - exact.mean(a);
            for (int b = 0; b <= a; b++) {
                products[a][b] += (figures[a] - exact.mean(a)) * (figures[b] - exact.mean(b));
            }
        }
    }

    private void check() {
        for (int a = 0; a < sum.length; a++) {
            double variance = exact.covariance(a, a).orElseThrow();
            assertEquals(0, sum[a] / draws, 4 * Math.sqrt(variance / draws));
            for (int b = 0; b <= a; b++) {
                double together = exact.covariance(a, b).orElseThrow();
                double squares = variance * exact.covariance(b, b).orElseThrow() + together * together;
                assertEquals(together, products[a][b] / draws, 4 * Math.sqrt(squares / draws));
            }
        }
    }
}
