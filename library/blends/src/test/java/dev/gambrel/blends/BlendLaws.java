package dev.gambrel.blends;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.diagnostic.Result;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.term.Judged;
import dev.gambrel.yields.lean.Lean;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Assume;
import net.jqwik.api.Combinators;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

class BlendLaws {
    private static final double NEAR = 1e-7;
    private static final double BATCH = 40;

    record Figures(int lean, int kilograms, int price) {}

    @Provide
    Arbitrary<List<Tub>> anyTubs() {
        Arbitrary<Figures> figures = Combinators.combine(
                        Arbitraries.integers().between(0, 100),
                        Arbitraries.integers().between(1, 200),
                        Arbitraries.integers().between(0, 20))
                .as(Figures::new);
        return figures.list().ofMinSize(2).ofMaxSize(7).map(BlendLaws::tubs);
    }

    private static List<Tub> tubs(List<Figures> figures) {
        List<Tub> tubs = new ArrayList<>();
        for (Figures f : figures) {
            tubs.add(new Tub(
                    TradeName.of("tub " + tubs.size()),
                    Lean.of(f.lean(), Judged.VISUAL),
                    f.kilograms(),
                    Price.of(f.price())));
        }
        return tubs;
    }

    private static Result<LargestBatch> largest(List<Tub> tubs, int low, int high) {
        return LargestBatch.of(Tubs.of(tubs).orElseThrow(), target(low, high));
    }

    private static LeanTarget target(int low, int high) {
        return new LeanTarget(Judged.VISUAL, Math.min(low, high), Math.max(low, high));
    }

    @Property
    void the_largest_batch_meets_its_target_and_nothing_is_lost(
            @ForAll("anyTubs") List<Tub> tubs, @ForAll("percent") int low, @ForAll("percent") int high) {
        largest(tubs, low, high).value().ifPresent(found -> {
            LeanTarget target = target(low, high);
            double lean = found.batch().lean().mean();
            assertTrue(lean >= target.low() - NEAR && lean <= target.high() + NEAR, "lean " + lean);
            double left = found.left().stream().mapToDouble(Taken::kilograms).sum();
            double stock = tubs.stream().mapToDouble(Tub::kilograms).sum();
            assertEquals(stock, found.batch().kilograms() + left, 1e-9 * stock);
        });
    }

    @Provide
    Arbitrary<Integer> percent() {
        return Arbitraries.integers().between(0, 100);
    }

    @Property
    void the_lean_that_goes_in_is_the_lean_that_comes_out(
            @ForAll("anyTubs") List<Tub> tubs, @ForAll("percent") int low, @ForAll("percent") int high) {
        largest(tubs, low, high).value().ifPresent(found -> {
            Blend blend = found.batch();
            double in = blend.taken().stream()
                    .mapToDouble(t -> t.kilograms() * t.tub().percent())
                    .sum();
            assertEquals(in, blend.kilograms() * blend.lean().mean(), 1e-9 * Math.max(1, in));
            double fattest = blend.taken().stream()
                    .mapToDouble(t -> t.tub().percent())
                    .min()
                    .orElseThrow();
            double leanest = blend.taken().stream()
                    .mapToDouble(t -> t.tub().percent())
                    .max()
                    .orElseThrow();
            assertTrue(blend.lean().mean() >= fattest - 1e-9 && blend.lean().mean() <= leanest + 1e-9);
        });
    }

    @Property
    void one_tub_more_never_makes_the_largest_batch_smaller(
            @ForAll("anyTubs") List<Tub> tubs, @ForAll("percent") int low, @ForAll("percent") int high) {
        List<Tub> fewer = tubs.subList(0, tubs.size() - 1);
        double before = largest(fewer, low, high)
                .value()
                .map(found -> found.batch().kilograms())
                .orElse(0.0);
        double after = largest(tubs, low, high)
                .value()
                .map(found -> found.batch().kilograms())
                .orElse(0.0);
        assertTrue(after >= before * (1 - 1e-12), before + " kg, then " + after + " kg");
    }

    @Property
    void the_order_of_the_tubs_does_not_matter(
            @ForAll("anyTubs") List<Tub> tubs, @ForAll("percent") int low, @ForAll int seed) {
        List<Tub> shuffled = new ArrayList<>(tubs);
        Collections.shuffle(shuffled, new Random(seed));
        assertEquals(
                largest(tubs, low, 100).value(), largest(shuffled, low, 100).value());
        assertEquals(
                cheapest(tubs, target(low, low)).value(),
                cheapest(shuffled, target(low, low)).value());
    }

    /** No heavier batch: asking the linear programme for a little more than the largest finds none. */
    @Property(tries = 300)
    void no_batch_is_heavier_than_the_largest(
            @ForAll("anyTubs") List<Tub> tubs, @ForAll("percent") int low, @ForAll("percent") int high) {
        LargestBatch found = largest(tubs, low, high).value().orElse(null);
        Assume.that(found != null && !found.left().isEmpty());
        double more = found.batch().kilograms() * 1.001;
        Result<CheapestBatch> none =
                new LeastCost().of(new BatchOrder(Tubs.of(tubs).orElseThrow(), target(low, high), more));
        assertTrue(none.value().isEmpty(), "a batch of " + more);
    }

    @Property(tries = 300)
    void the_cheapest_batch_costs_no_more_than_any_square_of_two_tubs(
            @ForAll("anyTubs") List<Tub> tubs, @ForAll("percent") int percent) {
        cheapest(tubs, target(percent, percent)).value().ifPresent(found -> {
            double least = found.blend().cost().orElseThrow();
            assertEquals(BATCH, found.blend().kilograms(), 1e-9);
            assertEquals(percent, found.blend().lean().mean(), NEAR);
            for (Tub one : tubs) {
                for (Tub other : tubs) {
                    squareCost(one, other, percent)
                            .ifPresent(cost -> assertTrue(least <= cost + NEAR, one + " " + other));
                }
            }
        });
    }

    /** With one row of lean beside that of the weight, a best blend splits two tubs at the most. */
    @Property(tries = 300)
    void the_cheapest_batch_splits_no_more_than_two_tubs(
            @ForAll("anyTubs") List<Tub> tubs, @ForAll("percent") int percent) {
        cheapest(tubs, target(percent, percent)).value().ifPresent(found -> {
            long split = found.blend().taken().stream()
                    .filter(each -> each.tub().kilograms() - each.kilograms() > NEAR)
                    .count();
            assertTrue(split <= 2, found.toString());
        });
    }

    /** The dearer the leaner, so that the cheapest blend takes as much of the fatter as the promise lets it. */
    @Property(tries = 300)
    void a_promise_by_cutting_planes_is_that_of_the_one_root(
            @ForAll("percent") int lean, @ForAll("percent") int fat, @ForAll("spread") int s, @ForAll("spread") int r) {
        Assume.that(lean > fat);
        double target = (2.0 * lean + fat) / 3;
        Promise surely = new Promise.At(0.9);
        OptionalDouble most = PromisedSquare.mostOfFatter(Trim.lean(lean, s), Trim.lean(fat, r), target, surely);
        Tubs tubs = Trim.tubs(Trim.straying("lean", 100 - lean, s, 2), Trim.straying("trim", 100 - fat, r, 1));
        LeanTarget atLeast = LeanTarget.atLeast(target, Judged.CHEMICAL);
        Result<CheapestBatch> batch = new LeastCost().of(new BatchOrder(tubs, atLeast, 1, List.of(), surely));
        assertEquals(most.isPresent(), batch.value().isPresent());
        batch.value().ifPresent(found -> assertEquals(most.orElseThrow(), Trim.of(found.blend(), "trim"), 1e-4));
    }

    @Provide
    Arbitrary<Integer> spread() {
        return Arbitraries.integers().between(0, 5);
    }

    private static Result<CheapestBatch> cheapest(List<Tub> tubs, LeanTarget target) {
        return new LeastCost().of(new BatchOrder(Tubs.of(tubs).orElseThrow(), target, BATCH));
    }

    private static Optional<Double> squareCost(Tub one, Tub other, double percent) {
        return PearsonSquare.of(one.lean(), other.lean(), percent)
                .value()
                .filter(square ->
                        square.one() * BATCH <= one.kilograms() && square.other() * BATCH <= other.kilograms())
                .map(square -> BATCH * (square.one() * money(one) + square.other() * money(other)));
    }

    private static double money(Tub tub) {
        return ((Price.PerKilogram) tub.price()).money();
    }
}
