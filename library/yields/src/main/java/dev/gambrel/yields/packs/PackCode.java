package dev.gambrel.yields.packs;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Severity;

/** What can be found about packs that were weighed. */
public enum PackCode implements Code {
    /** The table says nothing of such a weight. */
    OUTSIDE_TABLE(
            "G1801", "nominal-outside-table", Severity.ERROR, "The packs say {nominal}; {table} holds for {extent}."),
    /** The test says nothing of such a batch. */
    BATCH_NOT_COVERED("G1802", "batch-not-covered", Severity.ERROR, "{test} has no plan for a batch of {packs} packs."),
    /** The plan takes another number of packs. */
    SAMPLE_NOT_OF_PLAN(
            "G1803",
            "sample-not-of-plan",
            Severity.ERROR,
            "Of a batch of {packs} packs the plan takes {wanted}; weighed were {weighed}."),
    /** A pack that weighs no more than its wrapping. */
    NOTHING_IN_IT(
            "G1804",
            "pack-weighs-nothing",
            Severity.ERROR,
            "A pack weighs {weight}, and with a tare of {tare} nothing is left."),
    /** Something that is no weight. */
    NOT_A_WEIGHT("G1805", "not-a-pack-weight", Severity.ERROR, "“{written}” is not the weight of a pack."),
    /** A pack that can hardly be one of these. */
    FAR_FROM_NOMINAL(
            "G1806",
            "far-from-nominal",
            Severity.WARNING,
            "A pack weighs {weight} net, and the packs say {nominal}.{question}"),
    /** No pack was weighed. */
    NO_PACKS("G1807", "no-packs-weighed", Severity.ERROR, "No pack was weighed."),
    /** More packs than one batch may hold. */
    BATCH_TOO_LARGE(
            "G1808",
            "batch-too-large",
            Severity.WARNING,
            "A batch of {packs} packs is larger than the {most} that {test} takes away from the end of the packing line.");

    private final Kind kind;

    PackCode(String id, String slug, Severity severity, String pattern) {
        this.kind = new Kind(id, slug, severity, pattern);
    }

    @Override
    public Kind kind() {
        return kind;
    }
}
