package dev.gambrel.yields.portions;

import dev.gambrel.tree.portion.Aim;
import dev.gambrel.tree.portion.Fewest;
import dev.gambrel.tree.portion.MuscleArea;
import dev.gambrel.tree.portion.Slicing;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.PortionedPiece;
import dev.gambrel.yields.figure.Estimate;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.OptionalLong;

/** What a portion comes to. Weights are kilograms; what is not known is not given, and never 0. */
public sealed interface PortionYield permits Weighed, Sliced, Divided {
    /**
     * The piece and how it is portioned.
     *
     * @return the piece
     */
    PortionedPiece from();

    /**
     * How many come from one piece, where that is by chance.
     *
     * @return the count, in kilograms or in millimetres; nothing of a piece that is divided into a number, nor of slices
     *     from a piece whose length is not stated
     */
    Optional<Portioning> counted();

    /**
     * The expected number of portions from one piece.
     *
     * @return the mean number
     */
    default OptionalDouble expectedNumber() {
        return counted().map(count -> OptionalDouble.of(count.expectedNumber())).orElse(OptionalDouble.empty());
    }

    /**
     * The weight of one portion.
     *
     * @return kilograms
     */
    Optional<Estimate> each();

    /**
     * What the cuts between portions take of one piece.
     *
     * @return kilograms, or nothing where no kerf is stated or it cannot be weighed
     */
    OptionalDouble lostToKerf();

    /**
     * What is expected to be left of one piece, its end pieces included.
     *
     * @return kilograms
     */
    OptionalDouble expectedRemainder();

    /**
     * The expected number of portions from all pieces of the carcass.
     *
     * @return the mean number
     */
    default OptionalDouble expectedNumberFromAll() {
        return ofAll(expectedNumber());
    }

    /**
     * What is expected to be left of all pieces together.
     *
     * @return kilograms
     */
    default OptionalDouble expectedRemainderOfAll() {
        return ofAll(expectedRemainder());
    }

    private OptionalDouble ofAll(OptionalDouble ofOne) {
        return ofOne.isPresent() ? OptionalDouble.of(from().pieces() * ofOne.getAsDouble()) : OptionalDouble.empty();
    }

    /**
     * How likely each number of portions from one piece is.
     *
     * @return the distribution, or nothing where the number's spread is not stated
     */
    default Optional<NumberOfPortions> numberFromOne() {
        return counted().flatMap(Portioning::number);
    }

    /**
     * How likely each number of portions from several carcasses is.
     *
     * <p>What is expected of one carcass is taken as settled: of 1.4 pieces to a carcass, 40 carcasses give 56. Costs
     * O(numbers² × log carcasses) with the numbers that are likely, at most 8,192; what is spread wider is taken as normal.
     * The pieces of one carcass vary together as {@link PortionedPiece#pairs} says.
     *
     * @param carcasses the carcasses, each like the one that this is expected of
     * @return the distribution, or nothing where the number's spread is not stated
     */
    default Optional<NumberOfPortions> numberFrom(SeveralCarcasses carcasses) {
        long pieces = (long) Math.floor(carcasses.number() * from().pieces() * (1 + 1e-12));
        int ofCarcass = from().ofCarcass();
        double correlation = from().pairs().correlation();
        return counted()
                .filter(count -> !count.isFromMeanAlone())
                .map(count -> new FromSeveral(pieces, ofCarcass, correlation)
                        .of(count, carcasses.doubt().ofMean(count, ofCarcass, correlation)));
    }

    /**
     * The largest number that can be promised.
     *
     * @param promise how sure, and from how many carcasses
     * @return the number, or nothing where the number's spread is not stated
     */
    default OptionalLong promised(Promise promise) {
        return numberFrom(promise.from())
                .map(number -> OptionalLong.of(number.promised(promise.certainty())))
                .orElse(OptionalLong.empty());
    }

    /**
     * The share of portions whose weight is accepted, their weight taken as normal.
     *
     * @return from 0 to 1, or nothing where no limit or no spread is stated
     */
    default OptionalDouble shareAccepted() {
        return each().flatMap(PortionWeight::of)
                .map(weight -> weight.shareWithin(from().portion().acceptance().weight()))
                .orElse(OptionalDouble.empty());
    }

    /**
     * The share of portions that are lighter than is accepted, their weight taken as normal.
     *
     * @return from 0 to 1, or nothing where no least weight or no spread is stated
     */
    default OptionalDouble shareTooLight() {
        return from().portion()
                .acceptance()
                .weight()
                .least()
                .flatMap(least -> each().flatMap(PortionWeight::of)
                        .map(weight -> OptionalDouble.of(weight.shareUnder(least.value()))))
                .orElse(OptionalDouble.empty());
    }

    /**
     * What a portion is expected to weigh over a weight that is paid for, those under it counted as nothing.
     *
     * @param paid kilograms
     * @return kilograms, or nothing where the spread of a portion's weight is not stated
     */
    default OptionalDouble givenAwayOver(double paid) {
        return each().flatMap(PortionWeight::of)
                .map(weight -> OptionalDouble.of(weight.giveAwayOver(paid)))
                .orElse(OptionalDouble.empty());
    }

    /**
     * What a portion is expected to weigh over its target, those under it counted as nothing.
     *
     * @return kilograms, or nothing where no weight is aimed at or no spread of cutting is stated
     */
    default OptionalDouble givenAway() {
        return from().portion()
                .aim()
                .targetWeight()
                .map(target -> givenAwayOver(target.mean()))
                .orElse(OptionalDouble.empty());
    }

    /**
     * The weight to aim at so that few enough portions are lighter than is accepted.
     *
     * @param share how many may be, more than 0 and less than 1
     * @return kilograms, or nothing where no weight is aimed at, or no least weight or no spread of cutting is stated
     */
    default OptionalDouble aimFor(double share) {
        return OptionalDouble.empty();
    }

    /**
     * How large the muscle is across, from what the piece weighs and how long it is, taken as equally thick all along.
     *
     * @return square centimetres, or nothing where the length of the piece is not stated
     */
    default OptionalDouble muscle() {
        return from().portion().slicing().length() instanceof Slicing.Length.Stated length
                ? OptionalDouble.of(MuscleArea.ofPiece(
                        from().weight().mean(), length.expected().mean()))
                : OptionalDouble.empty();
    }

    /**
     * The weight of all portions of one piece together.
     *
     * @return kilograms
     */
    default OptionalDouble expectedPortionsOfOne() {
        OptionalDouble left = expectedRemainder();
        return left.isPresent()
                ? OptionalDouble.of(Math.max(
                        0,
                        from().weight().mean()
                                - left.getAsDouble()
                                - lostToKerf().orElse(0)))
                : OptionalDouble.empty();
    }

    /**
     * The chance that one piece gives what it must, of what is written of the fewest.
     *
     * @return from 0 to 1, or nothing where nothing is written of it or the number's spread is not stated
     */
    default OptionalDouble chanceOfFewest() {
        return from().portion().acceptance().fewest() instanceof Fewest.From fewest
                ? counted()
                        .map(count -> count.chanceOfAtLeast(fewest.fromOnePiece(from().ofCarcass())))
                        .orElse(OptionalDouble.empty())
                : OptionalDouble.empty();
    }

    /**
     * What a piece comes to.
     *
     * @param piece the piece and how it is portioned
     * @return by weight, by thickness or by number
     */
    static PortionYield of(PortionedPiece piece) {
        if (piece.portion().aim() instanceof Aim.Number into) {
            return new Divided(piece, into.number());
        }
        return piece.portion().isByThickness() ? new Sliced(piece) : new Weighed(piece);
    }

    /**
     * What each portion of a carcass comes to.
     *
     * @param yields what the carcass gives
     * @return in the order of {@link ExpectedYields#portions}
     */
    static List<PortionYield> of(ExpectedYields yields) {
        return yields.portions().stream().map(PortionYield::of).toList();
    }
}
