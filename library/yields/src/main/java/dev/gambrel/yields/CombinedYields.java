package dev.gambrel.yields;

import dev.gambrel.tree.Stream;
import dev.gambrel.yields.figure.CombinedEstimate;
import dev.gambrel.yields.figure.CombinedFigures;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.JointEstimate;
import dev.gambrel.yields.plan.YieldPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.IntToDoubleFunction;
import java.util.function.ToDoubleFunction;

/**
 * What several carcasses should give together. That carcasses differ averages out over many; that the mean shares are not
 * known exactly does not. Both are kept, and told apart.
 *
 * <p>Carcass i of weight W_i has in each cut the shares M + D + E_i: the means as stated, the doubt about them, the same for
 * all, and what it strays by itself; D and E_i are independent, each closes to 0 by the cut's rule ({@link
 * dev.gambrel.yields.closure.Closure}), so that the covariance of a cut is C_D + C_E. Let X be a linear figure for one
 * kilogram, V_D its variance with the doubts alone, V_DE with both. Given D the carcasses are independent and E[X | D] has the
 * variance V_D, since X is a product of shares of different cuts; so by the law of total variance
 *
 * <pre>
 * Var[Σ W_i X_i] = Σ E[W_i]² (V_DE − V_D) + Σ Var[W_i] (V_DE + E[X]²)    between carcasses
 *                + (Σ E[W_i])² V_D                                      doubt about the means
 * </pre>
 *
 * <p>exactly, and covariances likewise. Weights are taken as independent of shares. Where the doubt about a figure is not said,
 * its spread between carcasses is that about the means as stated, V_D counted as 0 there.
 *
 * <p>Immutable; safe between threads.
 */
public final class CombinedYields {
    private final CarcassLot lot;
    private final Doubt doubt;
    private final ExpectedYields ofOne;
    private final Variation stated;
    private final Variation doubts;
    private final Variation both;

    /** The specification as its shares vary in one way. */
    private record Variation(YieldPlan plan, Totals totals) {
        static Variation of(YieldPlan plan, ExpectedYields yields) {
            return new Variation(plan, Totals.of(plan, yields.tree()));
        }
    }

    /**
     * What comes together in one stream.
     *
     * @param stream the stream
     * @param weight kilograms from all carcasses
     */
    public record StreamTotal(Stream stream, CombinedEstimate weight) {}

    CombinedYields(ExpectedYields ofOne, YieldPlan plan, CarcassLot lot, Doubt doubt) {
        this.lot = lot;
        this.doubt = doubt;
        this.ofOne = ofOne;
        YieldPlan alone = plan.varying(v -> doubted(plan, v, doubt));
        this.stated = Variation.of(plan, ofOne);
        this.doubts = Variation.of(alone, ofOne);
        this.both = Variation.of(plan.plus(alone), ofOne);
    }

    /** The standard error of the mean share of a line, as a part of 1. */
    private static double doubted(YieldPlan plan, int v, Doubt doubt) {
        double deviation = Math.sqrt(plan.shareVariance(v));
        if (deviation == 0 || doubt instanceof Doubt.None) {
            return 0;
        }
        if (doubt instanceof Doubt.FromTests from) {
            return deviation / Math.sqrt(from.tests());
        }
        return doubt instanceof Doubt.OfParts of
                ? of.points().getOrDefault(plan.node(v).path(), Double.NaN) / 100
                : Double.NaN;
    }

    /**
     * The carcasses.
     *
     * @return as they were given
     */
    public CarcassLot lot() {
        return lot;
    }

    /**
     * What was said of how sure the mean shares are.
     *
     * @return as it was given
     */
    public Doubt doubt() {
        return doubt;
    }

    /**
     * What one carcass of their mean weight gives, the mean shares taken as they are stated.
     *
     * @return the yields of one, whose lines are also those of all
     */
    public ExpectedYields ofOne() {
        return ofOne;
    }

    /**
     * The weight of a line from all carcasses.
     *
     * @param line one of the lines of {@link #ofOne}
     * @return kilograms, or nothing where no share is stated
     */
    public Optional<CombinedEstimate> allPieces(YieldRow line) {
        int v = line.index();
        return line.allPieces().map(one -> combined(stated.plan.weight(v), doubts.plan.weight(v), both.plan.weight(v)));
    }

    /**
     * What has one outcome. All outcomes together are what the carcasses weigh.
     *
     * @param outcome what becomes of it
     * @return kilograms
     */
    public CombinedEstimate total(Outcome outcome) {
        return combined(
                stated.totals.outcomes().get(outcome),
                doubts.totals.outcomes().get(outcome),
                both.totals.outcomes().get(outcome));
    }

    /**
     * What is sold under its own name.
     *
     * @return kilograms
     */
    public CombinedEstimate products() {
        return combined(stated.totals.products(), doubts.totals.products(), both.totals.products());
    }

    /**
     * What comes together in each stream.
     *
     * @return every stream declared, in the order declared
     */
    public List<StreamTotal> streams() {
        List<StreamTotal> streams = new ArrayList<>();
        for (int i = 0; i < stated.totals.streams().size(); i++) {
            StreamYield stream = stated.totals.streams().get(i);
            CombinedEstimate weight = combined(
                    stream.weight(),
                    doubts.totals.streams().get(i).weight(),
                    both.totals.streams().get(i).weight());
            streams.add(new StreamTotal(stream.stream(), weight));
        }
        return streams;
    }

    /**
     * Any linear figure, as of one carcass.
     *
     * @param coefficient of each line, as for {@link ExpectedYields#figure}
     * @return the figure in kilograms times the unit of the coefficient
     */
    public CombinedEstimate figure(ToDoubleFunction<YieldRow> coefficient) {
        return figures(List.of(coefficient)).figure(0);
    }

    /**
     * Several linear figures at once, and how they vary together in both ways.
     *
     * @param coefficients of each line in each figure, as for {@link ExpectedYields#figures}
     * @return the figures in that order
     */
    public CombinedFigures figures(List<ToDoubleFunction<YieldRow>> coefficients) {
        List<IntToDoubleFunction> each = ofOne.ofLines(coefficients);
        return combined(stated.plan.figures(each), doubts.plan.figures(each), both.plan.figures(each));
    }

    private CombinedEstimate combined(Estimate statedOnly, Estimate doubtsOnly, Estimate inBoth) {
        return combined(JointEstimate.of(statedOnly), JointEstimate.of(doubtsOnly), JointEstimate.of(inBoth))
                .figure(0);
    }

    private CombinedFigures combined(JointEstimate statedOnly, JointEstimate doubtsOnly, JointEstimate inBoth) {
        int figures = statedOnly.size();
        double all = lot.kilograms().mean();
        double[] means = new double[figures];
        double[][] between = new double[figures][figures];
        for (int i = 0; i < figures; i++) {
            means[i] = all * statedOnly.mean(i);
            for (int j = 0; j < figures; j++) {
                double doubted = doubtsOnly.covariance(i, j).orElse(0);
                double ofOneCarcass = (doubtsOnly.covariance(i, j).isPresent() ? inBoth : statedOnly)
                        .covariance(i, j)
                        .orElse(Double.NaN);
                double square = statedOnly.mean(i) * statedOnly.mean(j);
                double sum =
                        times(lot.squares(), ofOneCarcass - doubted) + times(lot.variance(), ofOneCarcass + square);
                between[i][j] = i == j ? Math.max(0, sum) : sum;
            }
        }
        return new CombinedFigures(JointEstimate.of(means, between), doubtsOnly.times(all));
    }

    /** Nothing times what is not stated is nothing. */
    private static double times(double weights, double figure) {
        return figure == 0 ? 0 : weights * figure;
    }
}
