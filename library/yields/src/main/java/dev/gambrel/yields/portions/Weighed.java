package dev.gambrel.yields.portions;

import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.tree.portion.Measure;
import dev.gambrel.yields.PortionedPiece;
import dev.gambrel.yields.figure.Estimate;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * Portions by weight. Where a kerf and a thickness are stated too, a cut takes as much of a portion's weight as the kerf is
 * of its thickness.
 *
 * @param from the piece, with a weight aimed at
 */
public record Weighed(PortionedPiece from) implements PortionYield {
    @Override
    public Optional<Portioning> counted() {
        return Optional.of(portioning());
    }

    private Portioning portioning() {
        double target = target().mean();
        double last = from.portion().acceptance().smallest() instanceof Measure.Stated smallest
                ? Math.max(0, Math.min(target, smallest.value().value()))
                : target;
        return new Portioning(from.weight(), target, kerf().orElse(0), Ends.weight(from), last);
    }

    private Expected target() {
        return from.portion().aim().targetWeight().orElseThrow();
    }

    private OptionalDouble kerf() {
        Optional<Expected> thickness = from.portion().aim().targetThickness();
        return from.portion().slicing().kerf() instanceof Measure.Stated kerf && thickness.isPresent()
                ? OptionalDouble.of(
                        target().mean() * kerf.value().value() / thickness.get().mean())
                : OptionalDouble.empty();
    }

    @Override
    public Optional<Estimate> each() {
        return Optional.of(Estimate.of(target()));
    }

    @Override
    public OptionalDouble lostToKerf() {
        return kerf().isPresent() ? OptionalDouble.of(portioning().expectedLoss()) : OptionalDouble.empty();
    }

    @Override
    public OptionalDouble expectedRemainder() {
        return OptionalDouble.of(portioning().expectedRemainder());
    }

    @Override
    public OptionalDouble aimFor(double share) {
        Optional<Quantity> least = from.portion().acceptance().weight().least();
        return least.isPresent() && target().standardDeviation().isPresent()
                ? OptionalDouble.of(PortionWeight.aimFor(
                        least.get().value(), target().standardDeviation().getAsDouble(), share))
                : OptionalDouble.empty();
    }
}
