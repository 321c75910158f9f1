package dev.gambrel.batches;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import java.util.List;

/**
 * What is asked of a batch.
 *
 * @param each what is written of each carcass
 * @param carried columns that are carried through to what is written, such as the number of the carcass
 * @param printed how weights are written
 * @param numbers how figures are read
 * @param stopsAtFirst whether the first row that is refused ends the batch
 * @param threads how many threads work beside the one that reads; 0 for none. No result depends on it
 * @param limits how much is held at once
 */
public record BatchOrder(
        Each each,
        List<TradeName> carried,
        Printed printed,
        Numbers numbers,
        boolean stopsAtFirst,
        int threads,
        BatchLimits limits) {
    /** Totals in kilograms with three places, figures with a point, on the thread that reads. */
    public static final BatchOrder PLAIN = new BatchOrder(
            Each.TOTALS, List.of(), new Printed(Unit.KILOGRAM, 3), Numbers.WITH_POINT, false, 0, BatchLimits.DEFAULT);

    /** The most threads that are taken. */
    public static final int MOST_THREADS = 64;

    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException if there are fewer than no threads or more than {@value #MOST_THREADS}
     */
    public BatchOrder {
        carried = List.copyOf(carried);
        if (threads < 0 || threads > MOST_THREADS) {
            throw new IllegalArgumentException("from 0 to " + MOST_THREADS + " threads");
        }
    }

    /**
     * How weights are written.
     *
     * @param unit a unit of weight
     * @param decimals places after the point, 0 to {@value #MOST_DECIMALS}
     */
    public record Printed(Unit unit, int decimals) {
        /** The most places. */
        public static final int MOST_DECIMALS = 6;

        /**
         * Checks unit and places.
         *
         * @throws IllegalArgumentException if it is no unit of weight, or there are too many places
         */
        public Printed {
            if (unit.dimension() != Dimension.WEIGHT || decimals < 0 || decimals > MOST_DECIMALS) {
                throw new IllegalArgumentException("a unit of weight and 0 to " + MOST_DECIMALS + " places");
            }
        }
    }

    /** How figures are read where both readings are possible. */
    public enum Numbers {
        /** 1,234 is refused as unclear; 1,5 is one and a half, 1,234.5 is over a thousand. */
        WITH_POINT,
        /** A comma stands before the decimals: 1,234 is a little over one. */
        WITH_COMMA
    }

    /**
     * The same, told otherwise of each carcass.
     *
     * @param what what is written of each
     * @return the other order
     */
    public BatchOrder writing(Each what) {
        return new BatchOrder(what, carried, printed, numbers, stopsAtFirst, threads, limits);
    }

    /**
     * The same on several threads.
     *
     * @param number how many beside the one that reads
     * @return the other order
     */
    public BatchOrder onThreads(int number) {
        return new BatchOrder(each, carried, printed, numbers, stopsAtFirst, number, limits);
    }

    /**
     * The same on as many threads as the machine has room for.
     *
     * @return the other order
     */
    public BatchOrder onAllThreads() {
        return onThreads(Crew.ofTheMachine());
    }

    /**
     * The same with columns carried through.
     *
     * @param columns by the names that head them
     * @return the other order
     */
    public BatchOrder carrying(TradeName... columns) {
        return new BatchOrder(each, List.of(columns), printed, numbers, stopsAtFirst, threads, limits);
    }

    /**
     * The same within other limits.
     *
     * @param other the limits
     * @return the other order
     */
    public BatchOrder within(BatchLimits other) {
        return new BatchOrder(each, carried, printed, numbers, stopsAtFirst, threads, other);
    }

    /**
     * The same, ended by the first row that is refused.
     *
     * @return the other order
     */
    public BatchOrder stoppingAtFirst() {
        return new BatchOrder(each, carried, printed, numbers, true, threads, limits);
    }

    /**
     * The same with figures read otherwise.
     *
     * @param how the decimal mark
     * @return the other order
     */
    public BatchOrder reading(Numbers how) {
        return new BatchOrder(each, carried, printed, how, stopsAtFirst, threads, limits);
    }

    /**
     * The same with weights written otherwise.
     *
     * @param how unit and places
     * @return the other order
     */
    public BatchOrder printing(Printed how) {
        return new BatchOrder(each, carried, how, numbers, stopsAtFirst, threads, limits);
    }
}
