package dev.gambrel.yields.portions;

import dev.gambrel.quantity.Expected;
import dev.gambrel.tree.portion.Measure;
import dev.gambrel.tree.portion.Slicing;
import dev.gambrel.yields.PortionedPiece;
import dev.gambrel.yields.figure.Estimate;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/**
 * Slices by thickness, counted along the length of the piece: n of them need n thicknesses and n − 1 kerfs. The piece is
 * taken as equally thick all along, and a longer one as heavier in proportion; so a millimetre weighs the mean weight over
 * the mean length.
 *
 * @param from the piece, with a thickness aimed at
 */
public record Sliced(PortionedPiece from) implements PortionYield {
    @Override
    public Optional<Portioning> counted() {
        return length().map(this::portioning);
    }

    private Portioning portioning(Expected length) {
        double thickness = thickness().mean();
        double kerf = from.portion().slicing().kerf() instanceof Measure.Stated stated
                ? stated.value().value()
                : 0;
        double ends = from.weight().mean() > 0 ? Ends.weight(from) / perMillimetre(length) : 0;
        return new Portioning(Estimate.of(length), thickness, kerf, ends, thickness);
    }

    private Expected thickness() {
        return from.portion().aim().targetThickness().orElseThrow();
    }

    private Optional<Expected> length() {
        return from.portion().slicing().length() instanceof Slicing.Length.Stated stated
                ? Optional.of(stated.expected())
                : Optional.empty();
    }

    private double perMillimetre(Expected length) {
        return from.weight().mean() / length.mean();
    }

    @Override
    public Optional<Estimate> each() {
        return length().map(length -> Estimate.of(thickness()).times(perMillimetre(length)));
    }

    @Override
    public OptionalDouble lostToKerf() {
        boolean stated = from.portion().slicing().kerf() instanceof Measure.Stated;
        return stated ? weighed(Portioning::expectedLoss) : OptionalDouble.empty();
    }

    @Override
    public OptionalDouble expectedRemainder() {
        return weighed(Portioning::expectedRemainder);
    }

    private OptionalDouble weighed(ToDoubleFunction<Portioning> millimetres) {
        return length().map(length ->
                        OptionalDouble.of(perMillimetre(length) * millimetres.applyAsDouble(portioning(length))))
                .orElse(OptionalDouble.empty());
    }
}
