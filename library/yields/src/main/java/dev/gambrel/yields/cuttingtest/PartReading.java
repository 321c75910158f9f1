package dev.gambrel.yields.cuttingtest;

import dev.gambrel.diagnostic.TreePath;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;

/**
 * What a part weighs by the scales: all its pieces, left and right, tub by tub.
 *
 * @param part its address; {@link TreePath#ROOT} for the carcass
 * @param state whether it was weighed whole or after trimming
 * @param weighings that make up its weight together, one or more
 */
public record PartReading(TreePath part, State state, List<Weighing> weighings) {
    /** When a cut was weighed. */
    public enum State {
        /** As it enters the block, before anything is taken from it; whatever is no cut, too. */
        WHOLE,
        /** What its trims, bones and losses leave of a cut. */
        TRIMMED
    }

    /**
     * Copies the list.
     *
     * @throws IllegalArgumentException if there is no weighing
     */
    public PartReading {
        weighings = List.copyOf(weighings);
        if (weighings.isEmpty()) {
            throw new IllegalArgumentException("a reading without a weighing");
        }
    }

    /**
     * The weight.
     *
     * @return kilograms, all weighings together
     */
    public double kilograms() {
        return weighings.stream().mapToDouble(Weighing::kilograms).sum();
    }

    /**
     * How uncertain it is. Scales err independently of one another.
     *
     * @return the variance in square kilograms
     */
    public double variance() {
        return byScale().values().stream()
                .mapToDouble(w -> w.scale().variance(w.kilograms(), w.times()))
                .sum();
    }

    /** Scales by name, in the order of the weighings. */
    Map<String, Weighing> byScale() {
        Map<String, Weighing> sums = new LinkedHashMap<>();
        weighings.forEach(w -> sums.merge(
                w.scale().name(),
                w,
                (a, b) -> new Weighing(a.scale(), a.kilograms() + b.kilograms(), a.times() + b.times())));
        return sums;
    }
}
