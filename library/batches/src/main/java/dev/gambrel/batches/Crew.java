package dev.gambrel.batches;

import dev.gambrel.batches.csv.RowLines;
import java.io.IOException;
import java.util.ArrayDeque;
import java.util.Deque;
import java.util.List;
import java.util.concurrent.ExecutionException;
import java.util.concurrent.ExecutorService;
import java.util.concurrent.Executors;
import java.util.concurrent.ForkJoinPool;
import java.util.concurrent.Future;
import java.util.function.Supplier;

/**
 * Those who work a file out together: the caller reads rows and takes results over in the order of the file, the others work out
 * what lies between. So many chunks are under way at once, and no more.
 */
final class Crew implements AutoCloseable {
    /** What is done with the result of some rows. */
    interface Taking {
        /** Makes ready for rows that come next. */
        void ready(ChunkWork work);

        /** False if the batch ends with it. */
        boolean take(ChunkWork work) throws IOException;
    }

    private final List<ExecutorService> helpers;
    private final int mostUnderWay;
    private final Supplier<ChunkWork> room;
    private final Deque<ChunkWork> free = new ArrayDeque<>();
    private final Deque<Future<ChunkWork>> underWay = new ArrayDeque<>();

    Crew(int threads, Supplier<ChunkWork> room) {
        this.helpers = threads == 0 ? List.of() : List.of(Executors.newFixedThreadPool(threads, Crew::helper));
        this.mostUnderWay = 2 * threads;
        this.room = room;
    }

    /** How many helpers the machine has room for beside the caller. */
    static int ofTheMachine() {
        return Math.min(ForkJoinPool.getCommonPoolParallelism(), BatchOrder.MOST_THREADS);
    }

    private static Thread helper(Runnable work) {
        Thread thread = new Thread(work, "batch");
        thread.setDaemon(true);
        return thread;
    }

    /** Works all rows out; true if the batch was ended before the file. */
    boolean work(RowLines lines, Taking taking) throws IOException {
        boolean isMore = true;
        while (isMore) {
            ChunkWork next = free.isEmpty() ? room.get() : free.pop();
            next.chunk().clear();
            taking.ready(next);
            isMore = lines.fill(next.chunk());
            if (helpers.isEmpty()) {
                if (!taking.take(next.run())) {
                    return true;
                }
                free.push(next);
            } else {
                underWay.add(helpers.get(0).submit(next::run));
                if (underWay.size() > mostUnderWay && !takeFirst(taking)) {
                    return true;
                }
            }
        }
        while (!underWay.isEmpty()) {
            if (!takeFirst(taking)) {
                return true;
            }
        }
        return false;
    }

    private boolean takeFirst(Taking taking) throws IOException {
        try {
            ChunkWork done = underWay.remove().get();
            boolean goesOn = taking.take(done);
            free.push(done);
            return goesOn;
        } catch (InterruptedException interrupted) {
            Thread.currentThread().interrupt();
            throw new IOException("the batch was interrupted", interrupted);
        } catch (ExecutionException failed) {
            throw new IllegalStateException(failed.getCause());
        }
    }

    @Override
    public void close() {
        helpers.forEach(ExecutorService::shutdownNow);
    }
}
