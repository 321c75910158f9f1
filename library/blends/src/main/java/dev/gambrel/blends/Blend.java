package dev.gambrel.blends;

import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Spread;
import java.util.List;
import java.util.OptionalDouble;

/**
 * What goes together.
 *
 * @param taken how much of which tub, in the order of their names; tubs of which nothing is taken are left out
 */
public record Blend(List<Taken> taken) {
    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException if nothing is taken
     */
    public Blend {
        taken = List.copyOf(taken);
        if (!(taken.stream().mapToDouble(Taken::kilograms).sum() > 0)) {
            throw new IllegalArgumentException("a blend of nothing");
        }
    }

    /**
     * All of it.
     *
     * @return kilograms
     */
    public double kilograms() {
        return taken.stream().mapToDouble(Taken::kilograms).sum();
    }

    /**
     * How lean it is. The leans of different tubs stray independently of one another, so that Var = Σ x² s² / (Σ x)².
     *
     * @return per cent lean; the spread is not stated unless that of every tub in it is
     */
    public Estimate lean() {
        double leanWeight = 0;
        double variance = 0;
        for (Taken each : taken) {
            leanWeight += each.kilograms() * each.tub().percent();
            double s = each.tub().lean().percent().spread().variance();
            variance += each.kilograms() * each.kilograms() * s;
        }
        double all = kilograms();
        return new Estimate(leanWeight / all, Spread.ofVariance(variance / (all * all)));
    }

    /**
     * What it costs.
     *
     * @return in the currency of the prices, or nothing where a tub in it has none
     */
    public OptionalDouble cost() {
        double sum = 0;
        for (Taken each : taken) {
            if (!(each.tub().price() instanceof Price.PerKilogram price)) {
                return OptionalDouble.empty();
            }
            sum += each.kilograms() * price.money();
        }
        return OptionalDouble.of(sum);
    }
}
