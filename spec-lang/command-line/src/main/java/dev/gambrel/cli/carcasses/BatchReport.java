package dev.gambrel.cli.carcasses;

import dev.gambrel.batches.BatchResult;
import dev.gambrel.diagnostic.Visible;
import dev.gambrel.tree.CutTree;
import java.util.List;
import java.util.stream.Collectors;

/** What is told of a batch beside its figures. */
final class BatchReport {
    private static final String NOTES = """
            Each is the mean of one carcass. ± is one standard deviation: from one to another, how far carcasses differ by what was
            weighed and measured; of all carcasses, how far the sum strays as shares vary from carcass to carcass. The doubt about
            the mean shares is not counted, and the weight on the scale is taken as exact. A spread is not stated where the
            specification gives none, or where the share itself differs from carcass to carcass.
            What portioning leaves over is counted with the cut that it is cut from. Each figure is rounded by itself, so a sum may
            differ in the last place from its printed parts.
            Figures are estimates from the shares in the specification; no carcass is bound to keep to them.
            """;

    private BatchReport() {}

    /** What stands above the figures. */
    static String heading(BatchResult result) {
        CutTree tree = result.plan().tree();
        long number = result.sums().carcasses();
        return Visible.text(tree.specification().title()) + ", revision "
                + tree.specification().revision() + ", " + tree.species().name() + "\nExpected for " + number
                + (number == 1 ? " carcass\n\n" : " carcasses together\n\n");
    }

    /** What stands under them: how to read them, and what came of the rows. */
    static String below(BatchResult result) {
        return NOTES + "\n" + of(result);
    }

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
        counts("Warned of, and counted all the same:", result.counts().warned(), out);
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
