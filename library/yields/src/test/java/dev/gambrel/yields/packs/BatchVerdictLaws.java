package dev.gambrel.yields.packs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.yields.packs.rule.Directive76211;
import dev.gambrel.yields.packs.rule.Handbook133;
import dev.gambrel.yields.packs.rule.PackTest;
import dev.gambrel.yields.packs.rule.Recommendation87;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.constraints.IntRange;

/** Packs of 200 g, in tenths of a gram, about T1, T2 and the nominal quantity. */
class BatchVerdictLaws {
    private static final Quantity NOMINAL = Packs.grams("200");

    /** A test, a batch, and tenths of a gram of as many packs as the plan takes. */
    record Weighing(PackTest test, long batch, List<Integer> tenths) {
        BatchVerdict verdict(List<Integer> weights) {
            List<Quantity> net = weights.stream()
                    .map(t -> new Quantity(BigDecimal.valueOf(t, 1), Unit.GRAM))
                    .toList();
            return BatchVerdict.of(test, new Batch(batch, NOMINAL), new WeighedPacks(net))
                    .orElseThrow();
        }

        BatchVerdict verdict() {
            return verdict(tenths);
        }
    }

    @Provide
    Arbitrary<Weighing> weighings() {
        Arbitrary<PackTest> tests = Arbitraries.of(
                Directive76211.NOT_DESTRUCTIVE,
                Directive76211.DESTRUCTIVE,
                Recommendation87.REFERENCE_TEST,
                Handbook133.CATEGORY_A);
        Arbitrary<Long> batches = Arbitraries.of(100L, 250L, 300L, 800L, 4_000L);
        Arbitrary<Integer> middles = Arbitraries.integers().between(1_980, 2_040);
        return Combinators.combine(
                        tests, batches, middles, Arbitraries.integers().between(1, 80))
                .flatAs((test, batch, middle, width) -> Arbitraries.integers()
                        .between(middle - width, middle + width)
                        .list()
                        .ofSize(test.plan(batch).orElseThrow().stages().get(0).packs())
                        .map(tenths -> new Weighing(test, batch, tenths)));
    }

    @Property
    void more_in_every_pack_never_makes_it_worse(
            @ForAll("weighings") Weighing weighing, @ForAll @IntRange(min = 1, max = 200) int more) {
        List<Integer> heavier = weighing.tenths().stream().map(t -> t + more).toList();
        Answer before = weighing.verdict().answer();
        Answer after = weighing.verdict(heavier).answer();
        assertTrue(after.compareTo(before) <= 0, before + " became " + after);
    }

    @Property
    void the_order_of_packs_makes_no_difference(@ForAll("weighings") Weighing weighing, @ForAll long seed) {
        List<Integer> shuffled = new ArrayList<>(weighing.tenths());
        Collections.shuffle(shuffled, new Random(seed));
        assertEquals(weighing.verdict().results(), weighing.verdict(shuffled).results());
    }

    @Property
    void kilograms_give_the_answers_of_grams(@ForAll("weighings") Weighing weighing) {
        List<Quantity> kilograms = weighing.tenths().stream()
                .map(t -> new Quantity(BigDecimal.valueOf(t, 4), Unit.KILOGRAM))
                .toList();
        BatchVerdict other = BatchVerdict.of(
                        weighing.test(), new Batch(weighing.batch(), NOMINAL), new WeighedPacks(kilograms))
                .orElseThrow();
        assertEquals(weighing.verdict().results(), other.results());
    }

    /** The answer comes from exact sums; the limit that is shown agrees with it save in its last digits. */
    @Property
    void the_margin_that_is_shown_has_the_sign_of_the_answer(@ForAll("weighings") Weighing weighing) {
        RuleResult.Mean mean = (RuleResult.Mean) weighing.verdict().results().get(0);
        int sign = mean.margin().amount().signum();
        boolean near = mean.margin().amount().abs().doubleValue() < 1e-20;
        assertTrue(near || (sign > 0) == (mean.answer() == Answer.ACCEPT), mean.toString());
    }

    /** For every label from 5.0 g to 10,000.0 g, and in kilograms as in grams. */
    @Property
    void exactly_t1_is_not_short_and_a_microgram_less_is(@ForAll @IntRange(min = 50, max = 100_000) int tenths) {
        Quantity limit = t1(tenths);
        Quantity lighter = new Quantity(limit.amount().subtract(new BigDecimal("0.000001")), Unit.GRAM);
        Quantity inKilograms = new Quantity(limit.common(), Unit.KILOGRAM);
        assertEquals(1, new WeighedPacks(List.of(limit, inKilograms, lighter)).under(limit));
    }

    /** The table has no jump: a label that says a little more never has a smaller limit. */
    @Property
    void a_heavier_label_never_has_a_lower_limit(@ForAll @IntRange(min = 50, max = 99_999) int tenths) {
        Quantity t1 = t1(tenths);
        assertTrue(t1.compareTo(t1(tenths + 1)) <= 0, t1.toString());
    }

    private static Quantity t1(int tenths) {
        Quantity nominal = new Quantity(BigDecimal.valueOf(tenths, 1), Unit.GRAM);
        return Directive76211.TOLERABLE_NEGATIVE_ERROR.at(nominal).orElseThrow().firstLimit();
    }
}
