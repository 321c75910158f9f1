package dev.gambrel.yields.packs;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.yields.packs.rule.Citation;
import dev.gambrel.yields.packs.rule.PackTest;
import dev.gambrel.yields.packs.rule.SamplingPlan;
import dev.gambrel.yields.packs.rule.SamplingStage;
import dev.gambrel.yields.packs.rule.Tolerance;
import dev.gambrel.yields.packs.rule.ToleranceTable;
import java.util.List;
import java.util.Optional;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/**
 * What a published test says of a batch, shown by the packs that were weighed.
 *
 * @param test the test
 * @param batch the batch
 * @param tolerance how much a pack may lack
 * @param packs what was weighed
 * @param results one for each rule that the test knows
 */
public record BatchVerdict(
        PackTest test, Batch batch, Tolerance tolerance, WeighedPacks packs, List<RuleResult> results) {
    /** What must be said beside every verdict. */
    public static final String CAUTION =
            "Check the law where the packs are made and sold before you act on this: rules differ by country and change.";

    private static final Place PLACE = new Place.InTree(TreePath.ROOT, Aspect.BAND);

    /** Copies the list. */
    public BatchVerdict {
        results = List.copyOf(results);
    }

    /**
     * Judges a batch.
     *
     * @param test a published test
     * @param batch the batch
     * @param packs as many packs as the test's plan takes of such a batch, drawn at random; of double sampling those of the
     *     first sample, or of both
     * @return the verdict, with a warning where the batch is larger than the test takes; or an error of {@link PackCode} that says
     *     why the test does not apply
     */
    public static Result<BatchVerdict> of(PackTest test, Batch batch, WeighedPacks packs) {
        Optional<Tolerance> tolerance = test.tolerance(batch.nominal());
        if (tolerance.isEmpty()) {
            return Result.failed(List.of(outsideTable(test, batch)));
        }
        Optional<SamplingPlan> plan = test.plan(batch.packs());
        if (plan.isEmpty()) {
            return Result.failed(List.of(notCovered(test, batch)));
        }
        Optional<SamplingStage> stage = plan.get().stages().stream()
                .filter(each -> each.packs() == packs.count())
                .findFirst();
        if (stage.isEmpty()) {
            return Result.failed(List.of(notOfPlan(plan.get(), batch, packs)));
        }
        Rules rules = new Rules(test, batch, tolerance.get(), packs);
        return Result.of(
                new BatchVerdict(test, batch, tolerance.get(), packs, rules.results(plan.get(), stage.get())),
                batch.packs() > test.largestBatch() ? List.of(tooLarge(test, batch)) : List.of());
    }

    private static Diagnostic outsideTable(PackTest test, Batch batch) {
        ToleranceTable table = test.tables().stream()
                .filter(each -> each.units().contains(batch.nominal().unit()))
                .findFirst()
                .orElse(test.tables().get(0));
        return Diagnostic.of(PackCode.OUTSIDE_TABLE, PLACE)
                .with("nominal", batch.nominal())
                .with("table", table.name())
                .with("extent", table.extent())
                .help("Look whether the figure and its unit are what the label says; for other weights ask what the law"
                        + " where the packs are sold says.");
    }

    private static Diagnostic notCovered(PackTest test, Batch batch) {
        return Diagnostic.of(PackCode.BATCH_NOT_COVERED, PLACE)
                .with("test", test.name())
                .with("packs", batch.packs())
                .help("Take a test that covers such a batch, or hold every pack against the packer's own three rules.");
    }

    private static Diagnostic notOfPlan(SamplingPlan plan, Batch batch, WeighedPacks packs) {
        String wanted = plan.stages().stream()
                .map(stage -> String.valueOf(stage.packs()))
                .collect(Collectors.joining(", or with a second sample "));
        return Diagnostic.of(PackCode.SAMPLE_NOT_OF_PLAN, PLACE)
                .with("weighed", packs.count())
                .with("packs", batch.packs())
                .with("wanted", wanted)
                .help("Draw and weigh as many as the plan takes; leaving out packs that were weighed spoils the test.");
    }

    private static Diagnostic tooLarge(PackTest test, Batch batch) {
        return Diagnostic.of(PackCode.BATCH_TOO_LARGE, PLACE)
                .with("packs", batch.packs())
                .with("most", test.largestBatch())
                .with("test", test.name())
                .help(
                        "At the end of the line the output of an hour is one batch; elsewhere judge it in smaller batches.");
    }

    /**
     * What the test says of the batch.
     *
     * @return the gravest answer of its rules
     */
    public Answer answer() {
        return results.stream().map(RuleResult::answer).reduce(Answer.ACCEPT, Answer::and);
    }

    /**
     * The rules that are broken.
     *
     * @return in the order mean, T1, T2
     */
    public List<RuleResult> broken() {
        return results.stream()
                .filter(result -> result.answer() == Answer.REJECT)
                .toList();
    }

    /**
     * Where the figures stand.
     *
     * @return each source once
     */
    public List<Citation> sources() {
        return Stream.concat(Stream.of(tolerance.citation()), results.stream().map(RuleResult::citation))
                .distinct()
                .toList();
    }

    /**
     * Whether some figure behind the verdict is recalled only.
     *
     * @return true if it should be looked up before anybody acts on the verdict
     */
    public boolean restsOnMemory() {
        return sources().stream().anyMatch(Citation::isFromMemory);
    }
}
