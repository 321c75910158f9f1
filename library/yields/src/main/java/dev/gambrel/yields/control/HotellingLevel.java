package dev.gambrel.yields.control;

import dev.gambrel.text.TradeName;
import dev.gambrel.yields.composition.Balance;
import dev.gambrel.yields.composition.Composition;
import dev.gambrel.yields.composition.CompositionSample;
import dev.gambrel.yields.figure.JointEstimate;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Where the shares of a cut lie and how they stray together while nothing changes. How far off a test is, is told by T², the square of
 * its distance in log-ratios, measured in what they stray (H. Hotelling, "The generalization of Student's ratio", Annals of Mathematical
 * Statistics 2, 1931). It takes all parts together, so it gives no more false alarms for a cut of many parts; raw shares would not do,
 * since they always close. Neither the order of the parts nor the choice of log-ratios makes a difference.
 *
 * <p>Immutable; safe between threads.
 */
public final class HotellingLevel implements HotellingAnswer {
    private final List<TradeName> parts;
    private final CompositionSample tests;
    private final JointEstimate logRatios;
    private final Cholesky spread;

    private HotellingLevel(List<TradeName> parts, CompositionSample tests, JointEstimate logRatios, Cholesky spread) {
        this.parts = List.copyOf(parts);
        this.tests = tests;
        this.logRatios = logRatios;
        this.spread = spread;
    }

    /**
     * Works the level out.
     *
     * @param parts the names of the parts
     * @param tests the shares of tests that nothing speaks against
     * @return a {@link HotellingLevel}; or why there is none
     * @throws IllegalArgumentException if there are other parts than names
     */
    public static HotellingAnswer of(List<TradeName> parts, CompositionSample tests) {
        if (tests.parts() != parts.size()) {
            throw new IllegalArgumentException(parts.size() + " names for " + tests.parts() + " parts");
        }
        int m = tests.compositions().size();
        int needed = Math.max(ChartAnswer.FEWEST, parts.size() + 1);
        if (m < needed) {
            return new TooFew(m, needed);
        }
        JointEstimate logRatios = tests.logRatios();
        return Cholesky.of(isometric(logRatios))
                .<HotellingAnswer>map(spread -> new HotellingLevel(parts, tests, logRatios, spread))
                .orElseGet(() -> new NeverVaries(m));
    }

    /** The same covariance by coordinates that vary freely. */
    private static double[][] isometric(JointEstimate logRatios) {
        int coordinates = logRatios.size() - 1;
        double[][] gradients = new double[coordinates][];
        for (int i = 0; i < coordinates; i++) {
            gradients[i] = coordinate(i).coefficients(logRatios.size());
        }
        JointEstimate free = logRatios.propagated(new double[coordinates], gradients);
        double[][] covariance = new double[coordinates][coordinates];
        for (int i = 0; i < coordinates; i++) {
            for (int j = 0; j < coordinates; j++) {
                covariance[i][j] = free.covariance(i, j).orElseThrow();
            }
        }
        return covariance;
    }

    /** The parts up to one against the next, as {@link Composition#ilr} has them. */
    private static Balance coordinate(int index) {
        return new Balance(IntStream.rangeClosed(0, index).boxed().toList(), List.of(index + 1));
    }

    /**
     * How many tests the level was worked out of.
     *
     * @return 8 or more
     */
    public int tests() {
        return tests.compositions().size();
    }

    /**
     * How far off a test is.
     *
     * @param shares the shares of the test
     * @return T², 0 or more
     * @throws IllegalArgumentException if it has other parts
     */
    public double squaredDistance(Composition shares) {
        double[] gap = gap(shares);
        double[] free = new double[gap.length - 1];
        Arrays.setAll(free, i -> sum(coordinate(i).coefficients(gap.length), gap));
        return spread.squaredLength(free);
    }

    /**
     * Which balances tell how far off a test is: each part against each other, and each against all others. T² is the greatest square of
     * deviations that any balance of logarithms has, so none of these tells more than the whole.
     *
     * @param shares the shares of the test
     * @return all of them, the one that is most standard deviations off first
     * @throws IllegalArgumentException if it has other parts
     */
    public List<Contribution> contributions(Composition shares) {
        double[] gap = gap(shares);
        double whole = squaredDistance(shares);
        return balances().stream()
                .map(balance -> contribution(balance, gap, whole))
                .sorted(Comparator.comparingDouble(each -> -Math.abs(each.deviations())))
                .toList();
    }

    private List<Balance> balances() {
        List<Balance> balances = new ArrayList<>();
        for (int i = 0; i < parts.size(); i++) {
            for (int j = i + 1; j < parts.size(); j++) {
                balances.add(new Balance(List.of(i), List.of(j)));
            }
        }
        for (int i = 0; i < parts.size() && parts.size() > 2; i++) {
            int part = i;
            List<Integer> others = IntStream.range(0, parts.size())
                    .filter(k -> k != part)
                    .boxed()
                    .toList();
            balances.add(new Balance(List.of(part), others));
        }
        return balances;
    }

    private Contribution contribution(Balance balance, double[] gap, double whole) {
        double[] coefficients = balance.coefficients(gap.length);
        double sd = Math.sqrt(logRatios.combination(coefficients).spread().variance());
        double deviations = sum(coefficients, gap) / sd;
        return new Contribution(
                names(balance.over()),
                names(balance.under()),
                deviations,
                whole == 0 ? 0 : Math.min(1, deviations * deviations / whole));
    }

    private List<TradeName> names(List<Integer> indices) {
        return indices.stream().map(parts::get).toList();
    }

    private double[] gap(Composition shares) {
        if (shares.size() != parts.size()) {
            throw new IllegalArgumentException(shares.size() + " parts, not " + parts.size());
        }
        double[] gap = shares.clr();
        Arrays.setAll(gap, i -> gap[i] - logRatios.mean(i));
        return gap;
    }

    private static double sum(double[] coefficients, double[] gap) {
        double sum = 0;
        for (int i = 0; i < gap.length; i++) {
            sum += coefficients[i] * gap[i];
        }
        return sum;
    }

    /**
     * The tests that the level was worked out of, held against it.
     *
     * @param falseAlarms how often chance alone may give a signal, such as {@link HotellingLimits#USUAL}
     * @return the chart
     */
    public HotellingChart ofItsTests(double falseAlarms) {
        return chart(tests, limits(falseAlarms).ofSameTests());
    }

    /**
     * Tests that came after, held against the level.
     *
     * @param sample the later tests
     * @param falseAlarms how often chance alone may give a signal
     * @return the chart
     * @throws IllegalArgumentException if they have other parts
     */
    public HotellingChart ofLaterTests(CompositionSample sample, double falseAlarms) {
        return chart(sample, limits(falseAlarms).ofLaterTests());
    }

    private HotellingLimits limits(double falseAlarms) {
        return new HotellingLimits(parts.size() - 1, tests(), falseAlarms);
    }

    private HotellingChart chart(CompositionSample sample, double limit) {
        List<Double> squared =
                sample.compositions().stream().map(this::squaredDistance).toList();
        List<Signal.OutOfShape> signals = IntStream.range(0, squared.size())
                .filter(i -> squared.get(i) > limit)
                .mapToObj(i -> new Signal.OutOfShape(
                        i,
                        squared.get(i),
                        limit,
                        contributions(sample.compositions().get(i))))
                .toList();
        return new HotellingChart(limit, squared, signals);
    }
}
