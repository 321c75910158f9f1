package dev.gambrel.yields.cuttingtest;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.RandomSheets;
import dev.gambrel.yields.plan.Kind;
import dev.gambrel.yields.plan.Node;
import dev.gambrel.yields.plan.YieldPlan;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** What holds of worth whatever was weighed and whatever has a price. */
class WorthLaws {
    @Provide
    Arbitrary<CutTree> sheets() {
        return RandomSheets.withEverySpread();
    }

    private static PartPrice price(Node node, BigDecimal money) {
        return new PartPrice(
                node.path(), node.kind() == Kind.TRIMMED ? PartReading.State.TRIMMED : PartReading.State.WHOLE, money);
    }

    /** Of two parts in three, losses left out. */
    private static List<PartPrice> prices(YieldPlan plan, long seed, int times) {
        Random random = new Random(seed);
        List<PartPrice> prices = new ArrayList<>();
        for (int v = 0; v < plan.size(); v++) {
            BigDecimal money = BigDecimal.valueOf(random.nextInt(2_000), 2).multiply(BigDecimal.valueOf(times));
            if (plan.node(v).kind() != Kind.LOSS && random.nextInt(3) > 0) {
                prices.add(price(plan.node(v), money));
            }
        }
        return prices;
    }

    @Property(tries = 200)
    void prices_doubled_double_the_worth(@ForAll("sheets") CutTree tree, @ForAll long seed) {
        CuttingTest test = DrawnTest.of(tree, seed, 0.8);
        Worth once = Worth.of(test, prices(test.plan(), seed, 1));
        Worth twice = Worth.of(test, prices(test.plan(), seed, 2));
        assertEquals(
                2 * once.actual().mean(),
                twice.actual().mean(),
                1e-12 * once.actual().mean());
        assertEquals(
                once.difference().map(more -> 2 * more.mean()).orElse(0.0),
                twice.difference().map(more -> more.mean()).orElse(0.0),
                1e-12 * (1 + once.actual().mean()));
        assertEquals(
                4 * once.actual().spread().variance(),
                twice.actual().spread().variance(),
                1e-9 * once.actual().spread().variance());
    }

    @Property(tries = 200)
    void a_sheet_as_expected_is_worth_what_was_expected(@ForAll("sheets") CutTree tree, @ForAll long seed) {
        CuttingTest test = DrawnTest.asExpected(tree);
        Worth worth = Worth.of(test, prices(test.plan(), seed, 1));
        assertEquals(0, worth.difference().orElseThrow().mean(), 1e-9);
        worth.lines()
                .forEach(line -> assertEquals(0, line.difference().orElseThrow().mean(), 1e-9));
    }

    @Property(tries = 200)
    void lines_add_up_to_the_whole(@ForAll("sheets") CutTree tree, @ForAll long seed) {
        CuttingTest test = DrawnTest.of(tree, seed, 0.8);
        Worth worth = Worth.of(test, prices(test.plan(), seed, 1));
        double actual =
                worth.lines().stream().mapToDouble(line -> line.actual().mean()).sum();
        double expected = worth.lines().stream()
                .mapToDouble(line -> line.expected().orElseThrow().mean())
                .sum();
        assertEquals(actual, worth.actual().mean(), 1e-12 * (1 + actual));
        assertEquals(expected, worth.expected().mean(), 1e-12 * (1 + expected));
    }

    @Property(tries = 200)
    void shown_lines_add_up_to_the_shown_whole(@ForAll("sheets") CutTree tree, @ForAll long seed) {
        CuttingTest test = DrawnTest.of(tree, seed, 0.8);
        Worth worth = Worth.of(test, prices(test.plan(), seed, 1));
        RoundedWorth shown = RoundedWorth.of(worth, 2);
        assertEquals(
                shown.whole().difference().orElseThrow(),
                shown.lines().stream()
                        .map(line -> line.difference().orElseThrow())
                        .reduce(BigDecimal.valueOf(0, 2), BigDecimal::add));
        assertEquals(
                shown.whole().actual(),
                shown.lines().stream()
                        .map(RoundedWorth.Money::actual)
                        .reduce(BigDecimal.valueOf(0, 2), BigDecimal::add));
        for (int i = 0; i < worth.lines().size(); i++) {
            double exact = worth.lines().get(i).actual().mean();
            assertEquals(exact, shown.lines().get(i).actual().doubleValue(), 0.01 + 1e-9);
        }
    }

    /** A line is below no other; and each price is used, or it is said why not. */
    @Property(tries = 300)
    void nothing_is_valued_twice_and_no_price_is_passed_over(@ForAll("sheets") CutTree tree, @ForAll long seed) {
        CuttingTest test = DrawnTest.of(tree, seed, 0.6);
        YieldPlan plan = test.plan();
        List<PartPrice> prices = prices(plan, seed, 1);
        Worth worth = Worth.of(test, prices);
        List<Integer> valued = worth.lines().stream().map(Worth.Line::node).toList();
        for (int v : valued) {
            for (int above = plan.node(v).above();
                    above >= 0;
                    above = plan.node(above).above()) {
                assertTrue(!valued.contains(above), plan.node(v) + " and " + plan.node(above));
            }
        }
        assertEquals(
                prices.size(),
                valued.size() + worth.notUsed().size() + worth.notKnown().size());
    }

    @Property(tries = 100)
    void a_loss_has_no_price(@ForAll("sheets") CutTree tree) {
        CuttingTest test = DrawnTest.asExpected(tree);
        for (int v = 0; v < test.plan().size(); v++) {
            List<PartPrice> price = List.of(price(test.plan().node(v), BigDecimal.ONE));
            if (test.plan().node(v).kind() == Kind.LOSS) {
                assertThrows(IllegalArgumentException.class, () -> Worth.of(test, price));
            } else {
                assertEquals(1, Worth.of(test, price).lines().size());
            }
        }
    }
}
