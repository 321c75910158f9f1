package dev.gambrel.cli.packs;

import dev.gambrel.yields.packs.Answer;
import dev.gambrel.yields.packs.BatchVerdict;
import dev.gambrel.yields.packs.RuleResult;
import dev.gambrel.yields.packs.planning.ChanceOfPassing;
import dev.gambrel.yields.packs.planning.PackAim;
import dev.gambrel.yields.packs.rule.Citation;
import dev.gambrel.yields.packs.rule.PackRule;
import dev.gambrel.yields.packs.rule.SamplingStage;
import dev.gambrel.yields.packs.rule.SecondLimit;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/** A verdict for people: each rule with its figure, its limit and what is left between, then where the rules stand. */
final class VerdictText {
    private static final List<BigDecimal> SHARES =
            List.of(new BigDecimal("0.025"), new BigDecimal("0.05"), new BigDecimal("0.10"));

    private final BatchVerdict verdict;
    private final ShownWeight shown;
    private final StringBuilder out = new StringBuilder();

    private VerdictText(BatchVerdict verdict) {
        this.verdict = verdict;
        this.shown = new ShownWeight(verdict.batch().nominal().unit());
    }

    static String of(BatchVerdict verdict) {
        return new VerdictText(verdict).text();
    }

    private String text() {
        head();
        rules();
        line("");
        line(answer());
        line("");
        spread();
        aim();
        chances();
        sources();
        line(BatchVerdict.CAUTION);
        return out.toString();
    }

    private void line(String words) {
        out.append(words).append('\n');
    }

    private void head() {
        long batch = verdict.batch().packs();
        int weighed = verdict.packs().count();
        line("Packs of " + verdict.batch().nominal() + ", "
                + (batch == weighed ? "all " + batch + " weighed" : weighed + " weighed of a batch of " + batch));
        line("Judged by " + verdict.test().name());
        String first = verdict.tolerance().firstLimit().toString();
        String second = verdict.test().secondLimit() instanceof SecondLimit.NoneUnder
                ? "; T2, twice as much under it, is " + verdict.tolerance().secondLimit()
                : "";
        line("A pack may lack " + verdict.tolerance().amount() + ". T1, so much under the label, is " + first + second);
        line("");
    }

    private void rules() {
        List<String[]> rows = new ArrayList<>();
        rows.add(new String[] {"rule", "found", "limit", "between", ""});
        for (RuleResult result : verdict.results()) {
            rows.add(row(result));
        }
        int[] widths = new int[5];
        rows.forEach(row -> {
            for (int c = 0; c < widths.length; c++) {
                widths[c] = Math.max(widths[c], row[c].length());
            }
        });
        for (String[] row : rows) {
            StringBuilder cells = new StringBuilder();
            for (int c = 0; c < widths.length; c++) {
                cells.append(row[c]).append(" ".repeat(widths[c] - row[c].length() + 2));
            }
            line(cells.toString().stripTrailing());
        }
    }

    private String[] row(RuleResult result) {
        if (result instanceof RuleResult.Mean mean) {
            return new String[] {
                "mean weight",
                shown.of(mean.found()),
                "at least " + shown.of(mean.limit()),
                shown.gap(mean.margin()),
                word(mean.answer())
            };
        }
        RuleResult.Count count = (RuleResult.Count) result;
        String between = count.margin() < 0
                ? -count.margin() + " too many"
                : (count.margin() == 0 ? "none" : count.margin()) + " more might be";
        return new String[] {
            "packs under " + count.rule().words(),
            String.valueOf(count.found()),
            limit(count.stage()),
            between,
            word(count.answer())
        };
    }

    private static String limit(SamplingStage stage) {
        String most = stage.accept() == 0 ? "none" : "at most " + stage.accept();
        return stage.reject() == stage.accept() + 1 ? most : most + "; " + stage.reject() + " fail";
    }

    private static String word(Answer answer) {
        return switch (answer) {
            case ACCEPT -> "kept";
            case SECOND_SAMPLE -> "not settled";
            case REJECT -> "broken";
        };
    }

    private String answer() {
        return switch (verdict.answer()) {
            case ACCEPT -> "By these rules the batch is accepted.";
            case SECOND_SAMPLE ->
                "Not settled: draw and weigh " + secondSample() + " more, and judge them together with these.";
            case REJECT ->
                "By these rules the batch is not accepted: "
                        + verdict.broken().stream()
                                .map(result -> brokenRule(result.rule()))
                                .collect(Collectors.joining(", "))
                        + ".\nHold it back; what may be done with it the law where it is packed and sold decides.";
        };
    }

    private int secondSample() {
        List<SamplingStage> stages = stages();
        return stages.get(stages.size() - 1).packs() - verdict.packs().count();
    }

    private List<SamplingStage> stages() {
        return verdict.test().plan(verdict.batch().packs()).orElseThrow().stages();
    }

    private static String brokenRule(PackRule rule) {
        return switch (rule) {
            case MEAN -> "the packs are too light on average";
            case FIRST_LIMIT -> "too many packs are under T1";
            case SECOND_LIMIT -> "a pack is under T2";
        };
    }

    private void spread() {
        verdict.packs().deviation().ifPresent(deviation -> {
            BigDecimal factor = mean().factor().value().setScale(3, RoundingMode.HALF_EVEN);
            String allowance = factor.signum() == 0 ? "." : "; their mean may fall short by " + factor + " of that.";
            line("The packs stray by " + shown.of(deviation) + ", one standard deviation" + allowance);
        });
    }

    private RuleResult.Mean mean() {
        return (RuleResult.Mean) verdict.results().get(0);
    }

    private void aim() {
        boolean twoLimits = verdict.test().secondLimit() instanceof SecondLimit.NoneUnder;
        verdict.packs().deviation().filter(known -> twoLimits).ifPresent(deviation -> {
            PackAim aim = new PackAim(verdict.tolerance(), deviation.doubleValue(), 0);
            line(
                    "With at most 2.5 % under T1 and 1 in 10,000 under T2 (shares from memory) the lowest mean for packs that");
            line("stray so is " + shown.of(aim.mean()) + " (" + aim.governs().words() + " decides), "
                    + shown.of(aim.givenAway()) + " given away a pack.");
        });
        line("");
    }

    /** Only of the count under T1: what chance does to the mean is in its factor. */
    private void chances() {
        long batch = verdict.batch().packs();
        if (batch == verdict.packs().count() || batch > Integer.MAX_VALUE) {
            return;
        }
        ChanceOfPassing chance = new ChanceOfPassing(stages());
        line("How often a batch passes the count under T1, by how many of its packs are under it:");
        for (BigDecimal share : SHARES) {
            int light = share.multiply(BigDecimal.valueOf(batch)).intValue();
            double passes = chance.inBatchOf((int) batch, light);
            line("  " + light + " of " + batch + ": "
                    + new BigDecimal(100 * passes)
                            .setScale(1, RoundingMode.HALF_EVEN)
                            .toPlainString() + " % of samples");
        }
        line("");
    }

    private void sources() {
        line("Where the rules stand:");
        for (Citation citation : verdict.sources()) {
            line("  " + citation);
        }
        if (verdict.restsOnMemory()) {
            line("What is from memory must be looked up before anything rests on it.");
        }
        line("");
    }
}
