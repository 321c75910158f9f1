package dev.gambrel.tree.portion;

import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import java.util.Optional;

/**
 * How large the cut face of a muscle is if both weight and thickness are kept: weight over density and thickness. A muscle
 * that is smaller or larger cannot keep both.
 *
 * @param least square centimetres, 0 where no most thickness is stated
 * @param most square centimetres, infinite where no least thickness is stated
 */
public record MuscleArea(double least, double most) {
    /** Grams to a cubic centimetre of muscle: common practice, no source. */
    public static final double DENSITY = 1.05;

    private static final double GRAMS = 1000;
    private static final double MILLIMETRES = 10;

    /**
     * The area that the weight aimed at and the thickness imply.
     *
     * @param aim what is aimed at
     * @param acceptance what is accepted
     * @return the area, or nothing unless a weight is aimed at and something is said of the thickness
     */
    public static Optional<MuscleArea> aimedAt(Aim aim, Acceptance acceptance) {
        return of(aim, acceptance.thickness(), new Limit.NotStated());
    }

    /**
     * The area that any weight and any thickness that are accepted imply.
     *
     * @param aim what is aimed at; it stands for what is accepted where no limit is stated
     * @param acceptance what is accepted
     * @return the area, or nothing unless a weight is aimed at and something is said of the thickness
     */
    public static Optional<MuscleArea> accepted(Aim aim, Acceptance acceptance) {
        return of(aim, acceptance.thickness(), acceptance.weight());
    }

    private static Optional<MuscleArea> of(Aim aim, Limit thickness, Limit weight) {
        if (aim.targetWeight().isEmpty() || aim.targetThickness().isEmpty() && thickness instanceof Limit.NotStated) {
            return Optional.empty();
        }
        double target = aim.targetWeight().get().mean();
        boolean free = weight instanceof Limit.NotStated;
        double light = free ? target : weight.least().map(Quantity::value).orElse(0.0);
        double heavy = free ? target : weight.most().map(Quantity::value).orElse(Double.POSITIVE_INFINITY);
        return Optional.of(new MuscleArea(ofPiece(light, thick(aim, thickness)), ofPiece(heavy, thin(aim, thickness))));
    }

    /**
     * The area of a piece that is equally thick all along.
     *
     * @param kilograms its weight
     * @param millimetres its length
     * @return square centimetres
     */
    public static double ofPiece(double kilograms, double millimetres) {
        return kilograms * GRAMS / (DENSITY * millimetres / MILLIMETRES);
    }

    /**
     * How thick a slice of so much is.
     *
     * @param kilograms the weight of the slice
     * @param area of the muscle in square centimetres
     * @return millimetres
     */
    public static double thickness(double kilograms, double area) {
        return kilograms * GRAMS / (DENSITY * area) * MILLIMETRES;
    }

    private static double thin(Aim aim, Limit limit) {
        if (!(limit instanceof Limit.NotStated)) {
            return limit.least().map(Quantity::value).orElse(0.0);
        }
        Expected aimed = aim.targetThickness().orElseThrow();
        return aimed instanceof Expected.CentralRange range ? range.low().value() : aimed.mean();
    }

    private static double thick(Aim aim, Limit limit) {
        if (!(limit instanceof Limit.NotStated)) {
            return limit.most().map(Quantity::value).orElse(Double.POSITIVE_INFINITY);
        }
        Expected aimed = aim.targetThickness().orElseThrow();
        return aimed instanceof Expected.CentralRange range ? range.high().value() : aimed.mean();
    }
}
