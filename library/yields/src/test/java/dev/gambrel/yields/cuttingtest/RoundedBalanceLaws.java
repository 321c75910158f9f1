package dev.gambrel.yields.cuttingtest;

import static org.junit.jupiter.api.Assertions.assertEquals;

import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.RandomSheets;
import dev.gambrel.yields.plan.YieldPlan;
import dev.gambrel.yields.reconciliation.Reconciled;
import java.math.BigDecimal;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.IntRange;

/** What is shown of a sheet adds up, whatever was weighed. */
class RoundedBalanceLaws {
    @Provide
    Arbitrary<CutTree> sheets() {
        return RandomSheets.anySheets();
    }

    @Property(tries = 300)
    void shown_parts_add_up_to_the_shown_cut(
            @ForAll("sheets") CutTree tree,
            @ForAll long seed,
            @ForAll @DoubleRange(min = 0.2, max = 1) double ofParts,
            @ForAll @IntRange(max = 3) int places) {
        CuttingTest test = DrawnTest.of(tree, seed, ofParts);
        YieldPlan plan = test.plan();
        RoundedBalance shown = RoundedBalance.of(test, places);
        for (int cut = 0; cut < plan.size(); cut++) {
            if (!plan.isEnd(cut) && test.reconciled().weight(cut) instanceof Reconciled.Weight) {
                BigDecimal parts = shown.together(cut);
                for (int part = plan.firstPart(cut); part < plan.firstPart(cut + 1); part++) {
                    parts = parts.add(shown.weight(part));
                }
                assertEquals(shown.weight(cut), parts);
            }
            if (test.reconciled().weight(cut) instanceof Reconciled.Weight known) {
                double step = Math.pow(10, -places);
                assertEquals(known.estimate().mean(), shown.weight(cut).doubleValue(), step * (1 + 1e-6));
            }
        }
    }

    @Property(tries = 300)
    void where_it_went_adds_up_to_the_carcass_and_its_differences_to_nothing(
            @ForAll("sheets") CutTree tree,
            @ForAll long seed,
            @ForAll @DoubleRange(min = 0.2, max = 1) double ofParts) {
        CuttingTest test = DrawnTest.of(tree, seed, ofParts);
        WhereItWent went = WhereItWent.of(test);
        BigDecimal nothing = BigDecimal.valueOf(0, 3);
        assertEquals(
                RoundedBalance.of(test, 3).weight(0),
                went.rounded(3).stream().map(WhereItWent.Rounded::kilograms).reduce(nothing, BigDecimal::add));
        if (went.shares().stream().allMatch(WhereItWent.Share::isStated)) {
            assertEquals(
                    nothing,
                    went.rounded(3).stream()
                            .map(share -> share.difference().orElseThrow())
                            .reduce(nothing, BigDecimal::add));
        }
    }
}
