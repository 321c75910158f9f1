package dev.gambrel.batches;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.yields.batch.BatchPlan;
import dev.gambrel.yields.batch.BatchSums;
import java.util.List;

/**
 * What came of a batch. Rows are those worked out, {@code sums.carcasses()}, and those refused.
 *
 * @param rows how many rows were read, the heading and empty lines left out
 * @param counts how many rows were refused and warned of, for which reason
 * @param shown the first findings of each kind, in the order of the rows
 * @param unused columns that the specification does not know and nobody asked for
 * @param plan the specification as it was worked
 * @param sums over all carcasses that were not refused
 * @param isStopped whether the first row refused ended it before the file did
 */
public record BatchResult(
        long rows,
        Counts counts,
        List<Diagnostic> shown,
        List<String> unused,
        BatchPlan plan,
        BatchSums sums,
        boolean isStopped) {
    /** Copies the lists. */
    public BatchResult {
        shown = List.copyOf(shown);
        unused = List.copyOf(unused);
    }

    /**
     * How many rows there are of each reason.
     *
     * @param refused reasons for refusing, by identifier; a row has one
     * @param warned what was warned of, by identifier; a row may have several
     */
    public record Counts(List<Count> refused, List<Count> warned) {
        /** Copies the lists. */
        public Counts {
            refused = List.copyOf(refused);
            warned = List.copyOf(warned);
        }
    }

    /**
     * How many rows have one reason.
     *
     * @param code the reason
     * @param rows how many
     */
    public record Count(Code code, long rows) {}

    /**
     * How many rows were refused.
     *
     * @return rows that were read, less those worked out
     */
    public long refused() {
        return counts.refused().stream().mapToLong(Count::rows).sum();
    }
}
