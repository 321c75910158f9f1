package dev.gambrel.yields;

import static dev.gambrel.yields.Sheet.bone;
import static dev.gambrel.yields.Sheet.cut;
import static dev.gambrel.yields.Sheet.hogget;
import static dev.gambrel.yields.Sheet.loss;
import static dev.gambrel.yields.Sheet.pair;
import static dev.gambrel.yields.Sheet.rest;
import static dev.gambrel.yields.Sheet.sd;
import static dev.gambrel.yields.Sheet.trim;
import static dev.gambrel.yields.Sheet.yields;
import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Home;
import dev.gambrel.yields.closure.Closure;
import dev.gambrel.yields.closure.ClosureTest;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.plan.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Random;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.Test;

/** The exact moments against draws of normal shares (JCGM 101, propagation of distributions by Monte Carlo). */
class MonteCarloTest {
    private static final int DRAWS = 200_000;

    private static final CutTree TREE = hogget(
            pair(
                    "leg",
                    "33 ± 1.5",
                    cut("topside", "30 ± 3", trim("fat", "8 ± 2", "mince"), loss("drip", "2 ± 1")),
                    bone("femur", "15 ± 2", "bones"),
                    cut("silverside", "25 ± 2.5"),
                    rest("mince")),
            pair(
                    "shoulder",
                    "40 ± 2",
                    cut("blade", "60 ± 4"),
                    bone("shank", "25 ± 3", "bones"),
                    cut("neck end", "15 ± 2")),
            trim("flap fat", "7 ± 2.5", "waste"),
            cut("saddle", "20 ± 1"));

    /** One cut of the tree: its parts' mean shares and a factor of their covariance. */
    private record Drawn(double[] mean, double[][] factor, List<Drawn> parts, double[] coefficient) {
        static Drawn of(YieldRow row, ToDoubleFunction<YieldRow> figure) {
            List<YieldRow> rows = row.parts();
            int n = rows.size();
            double[] mean = new double[n];
            double[] sd = new double[n];
            double[] coefficient = new double[n];
            List<Drawn> parts = new ArrayList<>();
            int closing = -1;
            for (int j = 0; j < n; j++) {
                YieldRow part = rows.get(j);
                mean[j] = part.percentOfCutAbove().orElseThrow() / 100;
                coefficient[j] = figure.applyAsDouble(part);
                parts.add(of(part, figure));
                boolean left = part.kind() == Kind.REST || part.kind() == Kind.TRIMMED;
                closing = left ? j : closing;
                sd[j] = left ? 0 : statedSd(part, row);
            }
            return new Drawn(mean, n == 0 ? new double[0][0] : factor(sd, closing), parts, coefficient);
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

        double draw(Random random) {
            int n = mean.length;
            double[] z = new double[n];
            for (int j = 0; j < n; j++) {
                z[j] = random.nextGaussian();
            }
            double sum = 0;
            for (int i = 0; i < n; i++) {
                double share = mean[i];
                for (int j = 0; j <= i; j++) {
                    share += factor[i][j] * z[j];
                }
                sum += share * (coefficient[i] + parts.get(i).draw(random));
            }
            return sum;
        }
    }

    private static void assertAgrees(ToDoubleFunction<YieldRow> figure) {
        ExpectedYields yields = yields(TREE, "20");
        Estimate exact = yields.figure(figure);
        Drawn tree = Drawn.of(yields.weighed(), figure);
        Random random = new Random(20_260_101);
        double sum = 0;
        double squares = 0;
        for (int i = 0; i < DRAWS; i++) {
            double x = 20 * tree.draw(random) - exact.mean();
            sum += x;
            squares += x * x;
        }
        double sd = sd(exact);
        assertEquals(0, sum / DRAWS, 4 * sd / Math.sqrt(DRAWS));
        assertEquals(sd, Math.sqrt(squares / DRAWS), 4 * sd / Math.sqrt(2.0 * DRAWS));
    }

    @Test
    void saleable_weight_agrees_with_draws() {
        assertAgrees(row -> row.home()
                .map(h -> h instanceof Home.Product || h.equals(Sheet.to("mince")) ? 1.0 : 0.0)
                .orElse(0.0));
    }

    @Test
    void the_mince_agrees_with_draws() {
        assertAgrees(row -> row.home().equals(Optional.of(Sheet.to("mince"))) ? 1 : 0);
    }

    @Test
    void a_value_agrees_with_draws() {
        assertAgrees(row -> row.isEnd() ? row.name().length() : 0);
    }
}
