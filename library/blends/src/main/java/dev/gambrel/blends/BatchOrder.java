package dev.gambrel.blends;

import java.util.List;

/**
 * A batch that is to be made.
 *
 * @param tubs what is there
 * @param target how lean it is to be; in batches that stray, the most lean is held on average
 * @param kilograms how heavy
 * @param limits what tubs may make up together
 * @param promise how surely it is to be at least as lean as the target says
 */
public record BatchOrder(Tubs tubs, LeanTarget target, double kilograms, List<Limit> limits, Promise promise) {
    /**
     * Copies the limits.
     *
     * @throws IllegalArgumentException if the batch weighs nothing, or a limit names a tub that is not there
     */
    public BatchOrder {
        limits = List.copyOf(limits);
        if (!(kilograms > 0 && kilograms < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException("a batch weighs more than nothing, not " + kilograms + " kg");
        }
        for (Limit limit : limits) {
            limit.factors().keySet().stream()
                    .filter(name -> tubs.named(name).isEmpty())
                    .findFirst()
                    .ifPresent(name -> {
                        throw new IllegalArgumentException("there is no tub called " + name);
                    });
        }
    }

    /**
     * A batch without limits, as lean as its target on average.
     *
     * @param tubs what is there
     * @param target how lean it is to be
     * @param kilograms how heavy
     */
    public BatchOrder(Tubs tubs, LeanTarget target, double kilograms) {
        this(tubs, target, kilograms, List.of(), Promise.ON_AVERAGE);
    }

    BatchOrder leanerBy(double points) {
        return new BatchOrder(tubs, target.leanerBy(points), kilograms, limits, promise);
    }
}
