package dev.gambrel.cli.carcasses;

import dev.gambrel.batches.BatchResult;
import dev.gambrel.diagnostic.Visible;
import java.util.List;
import java.util.stream.Collectors;

/** What is told of a batch beside its figures. */
final class BatchReport {
    private BatchReport() {}

    static String of(BatchResult result) {
        StringBuilder out = new StringBuilder();
        out.append(result.rows())
                .append(result.rows() == 1 ? " carcass: " : " carcasses: ")
                .append(result.sums().carcasses())
                .append(" worked out, ")
                .append(result.refused())
                .append(" refused")
                .append(result.isStopped() ? ", with which it was ended.\n" : ".\n");
        counts("Refused:", result.counts().refused(), out);
        counts("Warned of:", result.counts().warned(), out);
        if (!result.unused().isEmpty()) {
            out.append("Columns not used: ")
                    .append(result.unused().stream().map(Visible::text).collect(Collectors.joining(", ")))
                    .append(".\n");
        }
        return out.toString();
    }

    private static void counts(String what, List<BatchResult.Count> counts, StringBuilder out) {
        if (!counts.isEmpty()) {
            out.append(what)
                    .append(counts.stream()
                            .map(count -> " " + count.rows() + " × "
                                    + count.code().id() + " " + count.code().slug())
                            .collect(Collectors.joining(",")))
                    .append(".\n");
        }
    }
}
