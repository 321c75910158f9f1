package dev.gambrel.yields.batch;

import dev.gambrel.quantity.Unit;
import dev.gambrel.yields.ExpectedYields;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * Evaluates carcasses of one plan. Makes no objects, save for a carcass that is refused or that only exact figures can settle,
 * such as one on the limit between two ways of working, and save what Commons Statistics makes in passing where a condition
 * asks what a piece weighs. Belongs to one thread at a time.
 *
 * <p>Each method takes carcasses {@code from} to {@code to} and writes for each a note: a sum of {@link #REFUSED}, {@link
 * #OUTSIDE_BAND}, {@link #OUTSIDE_RANGE} and {@link #RANGE_NOT_CHECKED}. A carcass that is noted as refused beforehand is passed
 * over.
 */
public final class BatchWorker {
    /** The carcass gives nothing; {@link BatchPlan#alone} tells why. */
    public static final byte REFUSED = 1;

    /** It is lighter or heavier than what the specification is for. */
    public static final byte OUTSIDE_BAND = 2;

    /** A reading is outside the range of its measure, or outside what an equation holds for. */
    public static final byte OUTSIDE_RANGE = 4;

    /** An equation holds for a range of something that was not given. */
    public static final byte RANGE_NOT_CHECKED = 8;

    /** How many carcasses are worked out side by side. */
    public static final int BLOCK = Block.SIZE;

    /** From so many lines on a stretch is worth a loop of its own. */
    private static final int LONG = 8;

    private static final Range POSSIBLE = new Range(0.001, 100_000);

    private final BatchPlan plan;
    private final Block block;
    private final Branches branches;
    private final double[] within;
    private final int[][] stretches;
    private final double[][] roots;
    private final int[] others;
    private final double[][] otherRoots;
    private final Decision[] decisions;
    private final List<Range> possible;
    private final int[] needed;
    private final Program program;
    private final double[] total = new double[Block.SIZE];

    BatchWorker(BatchPlan plan) {
        this.plan = plan;
        this.block = new Block(plan);
        this.branches = plan.layout().branches();
        this.within = branches.within();
        this.stretches = branches.stretches().stream()
                .filter(stretch -> stretch[1] - stretch[0] >= LONG)
                .toArray(int[][]::new);
        this.roots = Arrays.stream(stretches).map(stretch -> root(stretch[0])).toArray(double[][]::new);
        this.others = branches.stretches().stream()
                .filter(stretch -> stretch[1] - stretch[0] < LONG)
                .flatMapToInt(stretch -> IntStream.range(stretch[0], stretch[1]))
                .toArray();
        this.otherRoots = IntStream.of(others).mapToObj(this::root).toArray(double[][]::new);
        this.decisions = plan.decisions().toArray(Decision[]::new);
        this.possible = plan.kinds().possible();
        this.needed = plan.warnings().needed();
        this.program = new Program(plan.program());
    }

    /**
     * The weight of every line of every carcass.
     *
     * @param carcasses the carcasses
     * @param from the first of them
     * @param to the one after the last
     * @param notes what is noted of each, at its own index
     * @param weights kilograms, carcass after carcass with {@link BatchPlan#size()} lines each; NaN for one that is refused
     * @param at where the weights of the first begin
     */
    public void weights(Carcasses carcasses, int from, int to, byte[] notes, double[] weights, int at) {
        int n = plan.size();
        for (int first = from; first < to; first += Block.SIZE) {
            settle(carcasses, first, Math.min(to, first + Block.SIZE), notes);
            for (int i = 0; i < block.size(); i++) {
                int begin = at + (first - from + i) * n;
                if (block.isPassed(i)) {
                    Arrays.fill(weights, begin, begin + n, Double.NaN);
                } else {
                    multiply(i, weights, begin);
                }
            }
        }
    }

    private void multiply(int carcass, double[] weights, int begin) {
        for (int s = 0; s < roots.length; s++) {
            multiply(roots[s][carcass], within, stretches[s][0], stretches[s][1], weights, begin);
        }
        for (int k = 0; k < others.length; k++) {
            int line = others[k];
            weights[begin + line] = otherRoots[k][carcass] * within[line];
        }
    }

    /** The weights at the root of the branch that a line hangs in. */
    private double[] root(int line) {
        return block.weights(branches.of()[line]);
    }

    private static void multiply(double root, double[] within, int from, int to, double[] weights, int begin) {
        for (int line = from; line < to; line++) {
            weights[begin + line] = root * within[line];
        }
    }

    /**
     * Every total of every carcass.
     *
     * @param carcasses the carcasses
     * @param from the first of them
     * @param to the one after the last
     * @param notes what is noted of each, at its own index
     * @param weights kilograms, carcass after carcass in the order of {@link BatchPlan#totals()}; NaN for one that is refused
     * @param at where the totals of the first begin
     */
    public void totals(Carcasses carcasses, int from, int to, byte[] notes, double[] weights, int at) {
        int n = plan.totals().size();
        for (int first = from; first < to; first += Block.SIZE) {
            settle(carcasses, first, Math.min(to, first + Block.SIZE), notes);
            for (int t = 0; t < n; t++) {
                Totals.weigh(plan.ofBranch(t), block, total);
                for (int i = 0; i < block.size(); i++) {
                    weights[at + (first - from + i) * n + t] = block.isPassed(i) ? Double.NaN : total[i];
                }
            }
        }
    }

    /**
     * Adds carcasses to sums. The sums are the same however many workers share the carcasses and in whatever order, as long as
     * {@code from} is always a multiple of {@value #BLOCK} among the carcasses of the batch.
     *
     * @param carcasses the carcasses
     * @param from the first of them
     * @param to the one after the last
     * @param notes what is noted of each, at its own index
     * @param sums what they are added to, made by {@link BatchPlan#sums()} of the same plan
     */
    public void add(Carcasses carcasses, int from, int to, byte[] notes, BatchSums sums) {
        for (int first = from; first < to; first += Block.SIZE) {
            settle(carcasses, first, Math.min(to, first + Block.SIZE), notes);
            sums.add(block);
        }
    }

    /** Works out what each carcass of a block gives; those that are refused give nothing. */
    private void settle(Carcasses carcasses, int from, int to, byte[] notes) {
        block.take(carcasses, from, to, notes, POSSIBLE);
        plan.warnings().noteBand(block, notes, from);
        checkReadings();
        plan.warnings().noteReadings(block, notes, from);
        program.run(block);
        for (Decision decision : decisions) {
            decision.decide(block);
        }
        block.multiply();
        for (int i = 0; i < block.size(); i++) {
            if (block.isPassed(i)) {
                block.refuse(i);
            } else if (!block.sure()[i]) {
                settleExactly(carcasses, from + i, i, notes);
            }
        }
        block.weigh();
    }

    /** A reading of another kind than it should be, or one that is needed and missing, is for the exact way to judge. */
    private void checkReadings() {
        boolean[] sure = block.sure();
        for (int k = 0; k < possible.size(); k++) {
            Range range = possible.get(k);
            double[] readings = block.readings(k);
            for (int i = 0; i < block.size(); i++) {
                sure[i] &= Double.isNaN(readings[i]) || range.holds(readings[i]);
            }
        }
        for (int k : needed) {
            double[] readings = block.readings(k);
            for (int i = 0; i < block.size(); i++) {
                sure[i] &= !Double.isNaN(readings[i]);
            }
        }
    }

    private void settleExactly(Carcasses carcasses, int carcass, int inBlock, byte[] notes) {
        Optional<ExpectedYields> yields =
                plan.alone(carcasses, carcass, Unit.KILOGRAM).value();
        if (yields.isPresent()) {
            block.settle(inBlock, plan.exactly().ofOneKilogram(yields.get(), branches.roots()));
        } else {
            notes[carcass] = REFUSED;
            block.refuse(inBlock);
        }
    }
}
