package dev.gambrel.batches;

/** Is told how far a batch has come, now and then, on the thread that began it. */
@FunctionalInterface
public interface Progress {
    /** Nobody looks. */
    Progress SILENT = rows -> {};

    /**
     * So far.
     *
     * @param rows rows of which the result is written
     */
    void rows(long rows);
}
