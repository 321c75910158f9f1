package dev.gambrel.yields.batch;

import dev.gambrel.quantity.Unit;
import dev.gambrel.yields.ExpectedYields;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;

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

    /** How many carcasses are summed up in floating point before they are added to what is exact. */
    static final int BLOCK = 64;

    private static final double LEAST = 0.001;
    private static final double MOST = 100_000;

    private final BatchPlan plan;
    private final Row row;
    private final int[] stretches;
    private final int[] branch;
    private final double[] within;
    private final Decision[] decisions;
    private final List<Range> possible;
    private final int[] needed;
    private final boolean isSimple;

    BatchWorker(BatchPlan plan) {
        this.plan = plan;
        this.row = new Row(plan);
        Branches branches = plan.layout().branches();
        this.stretches = branches.stretches();
        this.branch = branches.of();
        this.within = branches.within();
        this.decisions = plan.decisions().toArray(Decision[]::new);
        this.possible = plan.kinds().possible();
        this.needed = plan.warnings().needed();
        this.isSimple = plan.decisions().isEmpty() && plan.readings().isEmpty();
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
        int begin = at;
        for (int i = from; i < to; i++) {
            if (settle(carcasses, i, notes)) {
                multiply(carcasses.kilograms()[i], weights, begin);
            } else {
                Arrays.fill(weights, begin, begin + n, Double.NaN);
            }
            begin += n;
        }
    }

    private void multiply(double kilograms, double[] weights, int begin) {
        for (int s = 0; s + 1 < stretches.length; s++) {
            multiply(kilograms * row.factor()[branch[stretches[s]]], stretches[s], stretches[s + 1], weights, begin);
        }
    }

    private void multiply(double kilograms, int from, int to, double[] weights, int begin) {
        for (int line = from; line < to; line++) {
            weights[begin + line] = kilograms * within[line];
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
        int begin = at;
        for (int i = from; i < to; i++) {
            if (settle(carcasses, i, notes)) {
                for (int t = 0; t < n; t++) {
                    weights[begin + t] = carcasses.kilograms()[i] * plan.perKilogram(t, row.factor());
                }
            } else {
                Arrays.fill(weights, begin, begin + n, Double.NaN);
            }
            begin += n;
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
        for (int block = from; block < to; block += BLOCK) {
            for (int i = block; i < Math.min(to, block + BLOCK); i++) {
                if (settle(carcasses, i, notes)) {
                    sums.add(carcasses.kilograms()[i], row.factor());
                }
            }
            sums.endBlock();
        }
    }

    /** Works out what one kilogram gives; false if the carcass is refused. */
    private boolean settle(Carcasses carcasses, int i, byte[] notes) {
        if ((notes[i] & REFUSED) != 0) {
            return false;
        }
        double kilograms = carcasses.kilograms()[i];
        boolean sure = kilograms >= LEAST && kilograms <= MOST;
        notes[i] = plan.warnings().band().holds(kilograms * plan.warnings().left()) ? 0 : OUTSIDE_BAND;
        if (!isSimple) {
            sure &= row.read(carcasses, i, possible, needed);
            notes[i] |= plan.warnings().readings(row);
            sure &= decide();
        }
        return sure || settleExactly(carcasses, i, notes);
    }

    private boolean decide() {
        boolean sure = row.estimate(plan.program());
        for (Decision decision : decisions) {
            sure &= decision.decide(row);
        }
        row.multiply();
        return sure;
    }

    private boolean settleExactly(Carcasses carcasses, int i, byte[] notes) {
        Optional<ExpectedYields> yields =
                plan.alone(carcasses, i, Unit.KILOGRAM).value();
        if (yields.isPresent()) {
            plan.exactly().copy(yields.get(), plan.layout().branches().roots(), row.factor());
            return true;
        }
        notes[i] = REFUSED;
        return false;
    }
}
