package dev.gambrel.yields.batch;

import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Spread;
import java.util.Arrays;

/**
 * Sums over carcasses. Belongs to one thread at a time; sums of several threads are put together by {@link #add(BatchSums)},
 * and come out the same in whatever order.
 *
 * <p>Every {@value Block#SIZE} carcasses are added in floating point, which keeps 15 digits, and what they come to is
 * added without any loss but that of what lies below 2⁻⁵² kg.
 */
public final class BatchSums {
    private final BatchPlan plan;
    private final int branches;
    private final int[] differingTotals;
    private final int[] place;
    private final ExactSum[] sums;
    private final ExactSum[] squares;
    private final double[] total = new double[Block.SIZE];
    private final long[] carcasses = new long[1];

    BatchSums(BatchPlan plan) {
        this.plan = plan;
        this.branches = plan.layout().branches().count();
        this.differingTotals = plan.differingTotals();
        int columns = branches + differingTotals.length;
        this.place = places(plan);
        this.sums = exact(columns);
        this.squares = exact(columns);
    }

    private static ExactSum[] exact(int n) {
        ExactSum[] sums = new ExactSum[n];
        Arrays.setAll(sums, i -> new ExactSum());
        return sums;
    }

    /** In which column each line and then each total is summed: its branch, or one of its own. */
    private static int[] places(BatchPlan plan) {
        int[] place = Arrays.copyOf(
                plan.layout().branches().of(), plan.size() + plan.totals().size());
        int column = plan.layout().branches().count();
        for (int t : plan.differingTotals()) {
            place[plan.size() + t] = column++;
        }
        return place;
    }

    /** Sums of one plan say nothing of another. */
    void mustBeOf(BatchPlan other) {
        if (plan != other) {
            throw new IllegalArgumentException("these sums were made by another plan");
        }
    }

    /** Adds a block that was weighed. */
    void add(Block block) {
        int n = block.size();
        for (int i = 0; i < n; i++) {
            carcasses[0] += block.isPassed(i) ? 0 : 1;
        }
        int column = 0;
        for (; column < branches; column++) {
            put(column, block.weights(column), n);
        }
        for (int t : differingTotals) {
            Totals.weigh(plan.ofBranch(t), block, total);
            put(column++, total, n);
        }
    }

    private void put(int column, double[] weights, int n) {
        double sum = 0;
        double square = 0;
        for (int i = 0; i < n; i++) {
            sum += weights[i];
            square += weights[i] * weights[i];
        }
        sums[column].add(sum);
        squares[column].add(square);
    }

    /**
     * Takes in the sums of other carcasses.
     *
     * @param other sums made by the same plan
     * @throws IllegalArgumentException if they were made by another
     */
    public void add(BatchSums other) {
        other.mustBeOf(plan);
        carcasses[0] += other.carcasses[0];
        for (int column = 0; column < sums.length; column++) {
            sums[column].add(other.sums[column]);
            squares[column].add(other.squares[column]);
        }
    }

    /**
     * How many carcasses were added, refused ones left out.
     *
     * @return 0 or more
     */
    public long carcasses() {
        return carcasses[0];
    }

    /**
     * A line over all carcasses.
     *
     * @param line the line, from 0
     * @return kilograms
     */
    public BatchFigure line(int line) {
        return figure(place[line], plan.line(line));
    }

    /**
     * A total over all carcasses.
     *
     * @param t which of {@link BatchPlan#totals()}
     * @return kilograms
     */
    public BatchFigure total(int t) {
        return figure(place[plan.size() + t], plan.total(t));
    }

    /** A fixed share of what is summed in a column, of which all follows. */
    private BatchFigure figure(int column, Estimate ofOneKilogram) {
        double share = ofOneKilogram.mean();
        double sum = sums[column].value();
        double mean = carcasses[0] == 0 ? 0 : sum / carcasses[0];
        double variance = (squares[column].value() - sum * mean) / (carcasses[0] - 1);
        Spread between =
                carcasses[0] < 2 ? Spread.NOT_STATED : new Spread.Stated(share * Math.sqrt(Math.max(0, variance)));
        Spread expected =
                Spread.ofVariance(squares[0].value() * ofOneKilogram.spread().variance());
        return new BatchFigure(sum * share, mean * share, between, expected);
    }
}
