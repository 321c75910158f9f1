package dev.gambrel.yields;

import static dev.gambrel.yields.Sheet.sd;

import dev.gambrel.yields.closure.Closure;
import dev.gambrel.yields.closure.ClosureTest;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.plan.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler.NormalizedGaussian;

/**
 * One cut of a tree whose shares are drawn, and all below it: normal shares that close, drawn by a factor of their covariance
 * and never divided by their sum.
 */
final class DrawnTree {
    private final double[] mean;
    private final double[][] factor;
    private final List<DrawnTree> parts;
    private final double[][] coefficients;

    private DrawnTree(double[] mean, double[][] factor, List<DrawnTree> parts, double[][] coefficients) {
        this.mean = mean;
        this.factor = factor;
        this.parts = parts;
        this.coefficients = coefficients;
    }

    /** A tree of which every spread is stated, and figures over it. */
    static DrawnTree of(YieldRow row, List<ToDoubleFunction<YieldRow>> figures) {
        List<YieldRow> rows = row.parts();
        int n = rows.size();
        double[] mean = new double[n];
        double[] sd = new double[n];
        double[][] coefficients = new double[n][];
        List<DrawnTree> parts = new ArrayList<>();
        int closing = -1;
        for (int j = 0; j < n; j++) {
            YieldRow part = rows.get(j);
            mean[j] = part.percentOfCutAbove().orElseThrow() / 100;
            coefficients[j] =
                    figures.stream().mapToDouble(f -> f.applyAsDouble(part)).toArray();
            parts.add(of(part, figures));
            boolean left = part.kind() == Kind.REST || part.kind() == Kind.TRIMMED;
            closing = left ? j : closing;
            sd[j] = left ? 0 : statedSd(part, row);
        }
        return new DrawnTree(mean, n == 0 ? new double[0][0] : factor(sd, closing), parts, coefficients);
    }

    /** The share's own standard deviation, taken back out of the exact product. */
    private static double statedSd(YieldRow part, YieldRow above) {
        Estimate whole = above.allPieces().orElseThrow();
        Estimate weight = part.allPieces().orElseThrow();
        double m = weight.mean() / whole.mean();
        double v = Math.pow(sd(whole), 2);
        return Math.sqrt((Math.pow(sd(weight), 2) - v * m * m) / (whole.mean() * whole.mean() + v));
    }

    private static double[][] factor(double[] sd, int closing) {
        Closure closure = closing >= 0 ? Closure.byOne(closing, sd) : Closure.amongAll(sd);
        int n = sd.length;
        double[][] lower = new double[n][n];
        for (int i = 0; i < n; i++) {
            for (int j = 0; j <= i; j++) {
                double c = ClosureTest.covariance(closure, n, i, j);
                for (int k = 0; k < j; k++) {
                    c -= lower[i][k] * lower[j][k];
                }
                lower[i][j] = i == j ? Math.sqrt(Math.max(0, c)) : lower[j][j] < 1e-9 ? 0 : c / lower[j][j];
            }
        }
        return lower;
    }

    /** The same tree with means that are off by what they may be: drawn once for all carcasses. */
    DrawnTree doubted(NormalizedGaussian normal, double ofSpread) {
        return new DrawnTree(
                shares(normal, ofSpread),
                factor,
                parts.stream().map(part -> part.doubted(normal, ofSpread)).toList(),
                coefficients);
    }

    /** The figures of one kilogram of one carcass. */
    double[] draw(NormalizedGaussian normal, int figures) {
        double[] shares = shares(normal, 1);
        double[] sum = new double[figures];
        for (int i = 0; i < shares.length; i++) {
            double[] below = parts.get(i).draw(normal, figures);
            for (int f = 0; f < figures; f++) {
                sum[f] += shares[i] * (coefficients[i][f] + below[f]);
            }
        }
        return sum;
    }

    private double[] shares(NormalizedGaussian normal, double ofSpread) {
        double[] z = new double[mean.length];
        double[] shares = mean.clone();
        for (int i = 0; i < z.length; i++) {
            z[i] = ofSpread * normal.sample();
            for (int j = 0; j <= i; j++) {
                shares[i] += factor[i][j] * z[j];
            }
        }
        return shares;
    }
}
