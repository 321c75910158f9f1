package dev.gambrel.tree;

import dev.gambrel.tree.estimate.Predictors;
import java.util.List;

/**
 * The carcass that the shares of a specification hold for.
 *
 * @param basis what its weight is taken of
 * @param dressing what is on and off it, as written: "skin off", "kidneys out"
 * @param band the weights for which the shares hold
 * @param steps named losses from other bases to this one
 * @param predictors what is measured on it and what is estimated from that
 */
public record Carcass(
        Basis basis, List<String> dressing, WeightBand band, List<BasisStep> steps, Predictors predictors) {
    /** Copies the lists. */
    public Carcass {
        dressing = List.copyOf(dressing);
        steps = List.copyOf(steps);
    }

    /**
     * A carcass on which nothing is measured.
     *
     * @param basis what its weight is taken of
     * @param dressing what is on and off it, as written
     * @param band the weights for which the shares hold
     * @param steps named losses from other bases to this one
     */
    public Carcass(Basis basis, List<String> dressing, WeightBand band, List<BasisStep> steps) {
        this(basis, dressing, band, steps, Predictors.NONE);
    }
}
