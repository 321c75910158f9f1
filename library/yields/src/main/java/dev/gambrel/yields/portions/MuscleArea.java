package dev.gambrel.yields.portions;

import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.portion.Limit;
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
     * The area that weight and thickness of a portion imply.
     *
     * @param portion a portion
     * @return the area, or nothing unless a weight is aimed at and something is said of the thickness
     */
    public static Optional<MuscleArea> of(Portion portion) {
        return portion.speaksOfThickness()
                ? portion.aim().targetWeight().map(weight -> of(weight.mean(), portion))
                : Optional.empty();
    }

    private static MuscleArea of(double kilograms, Portion portion) {
        double thin = thin(portion);
        double thick = thick(portion);
        return new MuscleArea(area(kilograms, thick), area(kilograms, thin));
    }

    private static double area(double kilograms, double millimetres) {
        return kilograms * GRAMS / (DENSITY * millimetres / MILLIMETRES);
    }

    private static double thin(Portion portion) {
        Limit limit = portion.acceptance().thickness();
        if (!(limit instanceof Limit.NotStated)) {
            return limit.least().map(Quantity::value).orElse(0.0);
        }
        Expected aimed = portion.aim().targetThickness().orElseThrow();
        return aimed instanceof Expected.CentralRange range ? range.low().value() : aimed.mean();
    }

    private static double thick(Portion portion) {
        Limit limit = portion.acceptance().thickness();
        if (!(limit instanceof Limit.NotStated)) {
            return limit.most().map(Quantity::value).orElse(Double.POSITIVE_INFINITY);
        }
        Expected aimed = portion.aim().targetThickness().orElseThrow();
        return aimed instanceof Expected.CentralRange range ? range.high().value() : aimed.mean();
    }
}
