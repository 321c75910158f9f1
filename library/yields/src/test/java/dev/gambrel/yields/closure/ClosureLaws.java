package dev.gambrel.yields.closure;

import java.util.Arrays;
import java.util.List;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Size;

class ClosureLaws {
    @Property(tries = 500)
    void a_closed_cut_keeps_every_stated_spread(
            @ForAll @Size(min = 3, max = 12) List<@DoubleRange(min = 0.01, max = 5) Double> spreads) {
        double[] sd = array(spreads);
        double largest = Arrays.stream(sd).max().orElseThrow();
        double others = Arrays.stream(sd).sum() - largest;
        for (int i = 0; i < sd.length; i++) {
            sd[i] = Math.min(sd[i], others);
        }
        ClosureTest.assertKeepsTheSpreads(Closure.amongAll(sd), sd);
    }

    @Property(tries = 200)
    void a_cut_closed_by_one_keeps_every_stated_spread(
            @ForAll @Size(min = 2, max = 12) List<@DoubleRange(min = 0, max = 5) Double> spreads) {
        double[] sd = array(spreads);
        sd[0] = 0;
        sd[0] = Math.sqrt(Arrays.stream(sd).map(s -> s * s).sum());
        ClosureTest.assertKeepsTheSpreads(Closure.byOne(0, sd), sd);
    }

    private static double[] array(List<Double> list) {
        return list.stream().mapToDouble(Double::doubleValue).toArray();
    }
}
