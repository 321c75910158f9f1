package dev.gambrel.yields.drift;

import dev.gambrel.yields.control.ChartAnswer;
import dev.gambrel.yields.control.ControlChart;
import dev.gambrel.yields.control.EwmaChart;
import dev.gambrel.yields.plan.Node;
import dev.gambrel.yields.plan.YieldPlan;
import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.apache.commons.statistics.distribution.PoissonDistribution;

/**
 * How the shares of all cuts move from test to test.
 *
 * <p>Shares are charted as they are, not by how well each was weighed: the tests are of one specification, so their carcasses are about
 * alike in size. Limits suppose that tests do not hang together and that shares are about normal.
 *
 * @param tests in the order of time
 * @param baseline which of them set the level
 * @param cuts those of which a test tells all parts, in the order of the plan
 * @param groups cutters, lots and scales that differ by more than chance explains; of those told about 1 in 20 is chance all the same
 * @param comparisons how many differences were looked at for that
 */
public record Drift(
        List<LabelledTest> tests, Baseline baseline, List<CutDrift> cuts, List<GroupFinding> groups, int comparisons) {
    /** What part of the differences that are told may be chance. */
    public static final double LEVEL = 0.05;

    /** How often chance alone puts a normal figure beyond 3 standard deviations either way. */
    public static final double BEYOND_LIMITS = 0.0027;

    /** Copies the lists. */
    public Drift {
        tests = List.copyOf(tests);
        cuts = List.copyOf(cuts);
        groups = List.copyOf(groups);
    }

    /**
     * Charts tests.
     *
     * @param tests 1 or more, in the order of time, all of the same specification worked in the same way
     * @param baseline which tests set the level
     * @return how the shares move
     * @throws IllegalArgumentException if there is none, or they have other lines than the first
     */
    public static Drift of(List<LabelledTest> tests, Baseline baseline) {
        if (tests.isEmpty() || !tests.stream().allMatch(each -> isAlike(each, tests.get(0)))) {
            throw new IllegalArgumentException("1 test or more of one specification worked in one way");
        }
        YieldPlan plan = tests.get(0).test().plan();
        List<CutDrift> cuts = IntStream.range(0, plan.size())
                .filter(v -> !plan.isEnd(v))
                .mapToObj(v -> CutDrift.of(tests, v, baseline))
                .filter(cut -> !cut.tests().isEmpty())
                .toList();
        List<GroupFinding> compared = Groups.compared(tests, cuts);
        return new Drift(tests, baseline, cuts, Groups.told(compared, LEVEL), compared.size());
    }

    private static boolean isAlike(LabelledTest one, LabelledTest other) {
        YieldPlan a = one.test().plan();
        YieldPlan b = other.test().plan();
        return a.size() == b.size()
                && IntStream.range(0, a.size())
                        .allMatch(v -> a.node(v).path().equals(b.node(v).path())
                                && a.node(v).kind() == b.node(v).kind()
                                && a.node(v).above() == b.node(v).above());
    }

    /**
     * A line of the specification.
     *
     * @param line of the plan, which is that of every test
     * @return what it is
     */
    public Node node(int line) {
        return tests.get(0).test().plan().node(line);
    }

    /**
     * How many shares are charted, of a cut of two parts only one.
     *
     * @return the charts of single tests
     */
    public long charts() {
        return told().flatMap(part -> chart(part.single())).count();
    }

    /**
     * How many signals of single tests and of averages chance alone is likely to make while nothing changes: at most, since neighbouring
     * averages pass their limits together and are told once.
     *
     * @return 0 or more
     */
    public double likelyFalseSignals() {
        return told().mapToDouble(this::likelyFalseSignals).sum();
    }

    private double likelyFalseSignals(PartDrift part) {
        return likelyFalse(part.single(), PassedByChance::single)
                + likelyFalse(part.average(), first -> PassedByChance.average(first, EwmaChart.USUAL));
    }

    private double likelyFalse(ChartAnswer answer, IntToDoubleFunction later) {
        if (!(answer instanceof ChartAnswer.Drawn drawn)) {
            return 0;
        }
        int tests = drawn.chart().points().size();
        int first = baseline.of(tests);
        return BEYOND_LIMITS * first + later.applyAsDouble(first) * (tests - first);
    }

    /**
     * How many signals there are of single tests and of averages: each test beyond its limits, and each average that passes them anywhere.
     * Tests out of shape are told beside them.
     *
     * @return 0 or more
     */
    public int signals() {
        int single = told().flatMap(part -> chart(part.single()))
                .mapToInt(chart -> chart.signals().size())
                .sum();
        long averages = told().flatMap(part -> chart(part.average()))
                .filter(chart -> !chart.signals().isEmpty())
                .count();
        return single + (int) averages;
    }

    private Stream<PartDrift> told() {
        return cuts.stream().flatMap(cut -> cut.told().stream());
    }

    private static Stream<ControlChart> chart(ChartAnswer answer) {
        return answer instanceof ChartAnswer.Drawn drawn ? Stream.of(drawn.chart()) : Stream.empty();
    }

    /**
     * Whether chance explains it all: no cutter, lot or scale differs, no cut is out of shape, and the charts give no more signals than
     * chance may well make, being as many or more in at least {@link #LEVEL} of cases if each came by itself (S. D. Poisson).
     *
     * @return true if there is no reason to act
     */
    public boolean isQuiet() {
        double likely = likelyFalseSignals();
        boolean isChance = signals() == 0
                || likely > 0 && PoissonDistribution.of(likely).survivalProbability(signals() - 1) >= LEVEL;
        return isChance && groups.isEmpty() && cuts.stream().allMatch(CutDrift::isInShape);
    }
}
