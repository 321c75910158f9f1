package dev.gambrel.yields.packs;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.yields.packs.rule.Certainty;
import dev.gambrel.yields.packs.rule.Citation;
import dev.gambrel.yields.packs.rule.MeanFactor;
import dev.gambrel.yields.packs.rule.PackRule;
import dev.gambrel.yields.packs.rule.PackTest;
import dev.gambrel.yields.packs.rule.SamplingPlan;
import dev.gambrel.yields.packs.rule.SamplingStage;
import dev.gambrel.yields.packs.rule.SecondLimit;
import dev.gambrel.yields.packs.rule.Tolerance;
import java.math.BigDecimal;
import java.math.MathContext;
import java.util.ArrayList;
import java.util.List;

/** Holds packs against the rules of a test. */
record Rules(PackTest test, Batch batch, Tolerance tolerance, WeighedPacks packs) {
    List<RuleResult> results(SamplingPlan plan, SamplingStage stage) {
        List<RuleResult> results = new ArrayList<>();
        results.add(mean(factor(plan, stage)));
        results.add(count(PackRule.FIRST_LIMIT, tolerance.firstLimit(), stage, plan.counts()));
        if (test.secondLimit() instanceof SecondLimit.NoneUnder none) {
            SamplingStage noneAtAll = SamplingStage.last(stage.packs(), 0);
            results.add(count(PackRule.SECOND_LIMIT, tolerance.secondLimit(), noneAtAll, none.citation()));
        }
        return results;
    }

    private RuleResult.Count count(PackRule rule, Quantity limit, SamplingStage stage, Citation citation) {
        return new RuleResult.Count(rule, limit, packs.under(limit), stage, citation);
    }

    private MeanFactor factor(SamplingPlan plan, SamplingStage stage) {
        MeanFactor printed = plan.factor();
        if (printed.packs() == stage.packs()) {
            return printed;
        }
        int n = stage.packs();
        Citation citation = new Citation(
                test.name() + " prints no factor for " + n + " packs: Student's t(" + test.confidence() + "; " + (n - 1)
                        + ") / √" + n,
                "its own formula",
                Certainty.WORKED_OUT);
        return new MeanFactor(BigDecimal.valueOf(MeanFactor.workedOut(test.confidence(), n)), n, citation);
    }

    /** The mean passes if what all packs lack together, squared, is no more than factor² n / (n − 1) times their scatter. */
    private RuleResult.Mean mean(MeanFactor factor) {
        BigDecimal n = BigDecimal.valueOf(packs.count());
        BigDecimal lacking = batch.nominal().common().multiply(n).subtract(packs.sum());
        BigDecimal left = lacking.multiply(lacking).multiply(n.subtract(BigDecimal.ONE));
        BigDecimal right = factor.value().multiply(factor.value()).multiply(n).multiply(packs.scatter());
        boolean passes = lacking.signum() <= 0 || packs.count() > 1 && left.compareTo(right) <= 0;
        BigDecimal allowed = packs.deviation().map(factor.value()::multiply).orElse(BigDecimal.ZERO);
        BigDecimal limit = batch.nominal().common().subtract(allowed, MathContext.DECIMAL128);
        return new RuleResult.Mean(
                shown(packs.mean()),
                shown(limit),
                shown(packs.mean().subtract(limit, MathContext.DECIMAL128)),
                factor,
                passes ? Answer.ACCEPT : Answer.REJECT);
    }

    private Quantity shown(BigDecimal kilograms) {
        Unit unit = batch.nominal().unit();
        return Quantity.rounded(kilograms.divide(unit.factor(), MathContext.DECIMAL128), unit);
    }
}
