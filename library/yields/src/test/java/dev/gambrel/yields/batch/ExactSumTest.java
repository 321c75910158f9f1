package dev.gambrel.yields.batch;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;

class ExactSumTest {
    private static ExactSum of(List<Double> weights) {
        ExactSum sum = new ExactSum();
        weights.forEach(sum::add);
        return sum;
    }

    @Property(tries = 300)
    void order_does_not_matter(
            @ForAll @Size(min = 1, max = 200) List<@DoubleRange(min = 0, max = 6.4e6) Double> weights,
            @ForAll Random random) {
        List<Double> shuffled = new ArrayList<>(weights);
        Collections.shuffle(shuffled, random);
        assertEquals(of(weights).value(), of(shuffled).value(), 0);
    }

    @Property(tries = 300)
    void parts_put_together_are_the_whole(
            @ForAll @Size(min = 2, max = 200) List<@DoubleRange(min = -1e5, max = 1e5) Double> weights) {
        ExactSum one = of(weights.subList(0, weights.size() / 2));
        ExactSum other = of(weights.subList(weights.size() / 2, weights.size()));
        other.add(one);
        assertEquals(of(weights).value(), other.value(), 0);
        assertEquals(weights.stream().mapToDouble(d -> d).sum(), other.value(), 1e-9);
    }

    @Example
    void a_thousand_tenths_are_a_hundred() {
        assertEquals(100, of(Collections.nCopies(1000, 0.1)).value(), 1e-13);
    }
}
