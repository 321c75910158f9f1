package dev.gambrel.yields.portions;

import dev.gambrel.yields.PortionedPiece;
import dev.gambrel.yields.figure.Estimate;
import java.util.Optional;
import java.util.OptionalDouble;

/**
 * A piece divided into a number of portions, as equal as may be.
 *
 * @param from the piece
 * @param number how many, 1 or more
 */
public record Divided(PortionedPiece from, int number) implements PortionYield {
    @Override
    public Optional<Portioning> counted() {
        return Optional.empty();
    }

    @Override
    public OptionalDouble expectedNumber() {
        return OptionalDouble.of(number);
    }

    @Override
    public Optional<Estimate> each() {
        Estimate whole = from.weight();
        double mean = whole.mean() - ends();
        return Optional.of(new Estimate(mean, whole.spread()).times(1.0 / number));
    }

    @Override
    public Optional<NumberOfPortions> numberFromOne() {
        return Optional.of(Listed.exactly(number));
    }

    @Override
    public Optional<NumberOfPortions> numberFrom(SeveralCarcasses carcasses) {
        long pieces = (long) Math.floor(carcasses.number() * from.pieces() * (1 + 1e-12));
        return Optional.of(Listed.exactly(pieces * number));
    }

    /** The cut through a joint is not counted. */
    @Override
    public OptionalDouble lostToKerf() {
        return OptionalDouble.empty();
    }

    @Override
    public OptionalDouble expectedRemainder() {
        return OptionalDouble.of(ends());
    }

    private double ends() {
        return Math.min(Ends.weight(from), from.weight().mean());
    }
}
