package dev.gambrel.cli.compare.report;

import dev.gambrel.yields.comparison.Comparison;
import dev.gambrel.yields.comparison.YieldComparison;
import java.util.List;

/**
 * Two specifications and what differs.
 *
 * @param before the earlier one
 * @param after the later one
 * @param comparison what differs in meaning
 * @param yields what a carcass gives by both
 */
public record ComparisonReport(ComparedFile before, ComparedFile after, Comparison comparison, Weights yields) {
    /** What a carcass gives by both. */
    public sealed interface Weights {
        /**
         * Figures.
         *
         * @param lines each line by both
         * @param remarks what was chosen to work them out, in sentences
         */
        record WorkedOut(YieldComparison lines, List<String> remarks) implements Weights {
            /** Copies the list. */
            public WorkedOut {
                remarks = List.copyOf(remarks);
            }
        }

        /**
         * No figures.
         *
         * @param because why, in a sentence
         */
        record NotWorkedOut(String because) implements Weights {}
    }
}
