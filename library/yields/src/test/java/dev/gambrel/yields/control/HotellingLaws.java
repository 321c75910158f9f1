package dev.gambrel.yields.control;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.text.TradeName;
import dev.gambrel.yields.composition.Composition;
import dev.gambrel.yields.composition.CompositionSample;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import java.util.stream.IntStream;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;

class HotellingLaws {
    private static final List<TradeName> PARTS =
            List.of("a", "b", "c", "d").stream().map(TradeName::of).toList();

    private static Composition of(List<Double> row, List<Integer> order, double factor) {
        return Composition.of(
                order.stream().mapToDouble(i -> factor * row.get(i)).toArray());
    }

    private static CompositionSample sample(List<List<Double>> rows, List<Integer> order, double factor) {
        return new CompositionSample(
                rows.stream().map(row -> of(row, order, factor)).toList());
    }

    private static List<Integer> order(long seed) {
        List<Integer> order = new ArrayList<>(IntStream.range(0, 4).boxed().toList());
        Collections.shuffle(order, new Random(seed));
        return order;
    }

    /** To take the parts in another order is to take other log-ratios: a rotation of their axes. */
    @Property(tries = 200)
    void neither_the_order_of_parts_nor_the_unit_makes_a_difference(
            @ForAll @Size(min = 9, max = 15) List<@Size(4) List<@DoubleRange(min = 1, max = 9) Double>> rows,
            @ForAll @Size(4) List<@DoubleRange(min = 1, max = 9) Double> next,
            @ForAll long seed) {
        List<Integer> plain = List.of(0, 1, 2, 3);
        List<Integer> order = order(seed);
        HotellingAnswer one = HotellingLevel.of(PARTS, sample(rows, plain, 1));
        HotellingAnswer other = HotellingLevel.of(order.stream().map(PARTS::get).toList(), sample(rows, order, 1000));
        Assume.that(one instanceof HotellingLevel && other instanceof HotellingLevel);
        HotellingLevel level = (HotellingLevel) one;
        HotellingLevel turned = (HotellingLevel) other;
        double squared = level.squaredDistance(of(next, plain, 1));
        assertEquals(squared, turned.squaredDistance(of(next, order, 1)), 1e-6 * (1 + squared));
        double first = level.contributions(of(next, plain, 1)).get(0).deviations();
        double turnedFirst = turned.contributions(of(next, order, 1)).get(0).deviations();
        assertEquals(Math.abs(first), Math.abs(turnedFirst), 1e-6 * (1 + Math.abs(first)));
    }

    /** T² is the greatest square of any balance; and over the tests of the level it adds up to (m − 1) p. */
    @Property(tries = 200)
    void no_balance_tells_more_than_the_whole(
            @ForAll @Size(min = 9, max = 15) List<@Size(4) List<@DoubleRange(min = 1, max = 9) Double>> rows) {
        CompositionSample sample = sample(rows, List.of(0, 1, 2, 3), 1);
        HotellingAnswer answer = HotellingLevel.of(PARTS, sample);
        Assume.that(answer instanceof HotellingLevel);
        HotellingLevel level = (HotellingLevel) answer;
        double sum = 0;
        for (Composition each : sample.compositions()) {
            double squared = level.squaredDistance(each);
            sum += squared;
            for (Contribution contribution : level.contributions(each)) {
                double square = contribution.deviations() * contribution.deviations();
                assertTrue(square <= squared * (1 + 1e-6) + 1e-9, square + " of " + squared);
            }
        }
        assertEquals(3.0 * (rows.size() - 1), sum, 1e-5 * sum);
    }
}
