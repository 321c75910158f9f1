package dev.gambrel.tree;

import dev.gambrel.text.TradeName;
import dev.gambrel.tree.choice.Grade;
import dev.gambrel.tree.estimate.Predictors;
import java.util.List;
import java.util.Optional;

/**
 * The carcass that the shares of a specification hold for.
 *
 * @param basis what its weight is taken of
 * @param dressing what is on and off it, as written: "skin off", "kidneys out"
 * @param band the weights for which the shares hold
 * @param steps named losses from other bases to this one
 * @param grades classes that a carcass falls into, which conditions may ask for
 * @param predictors what is measured on it and what is estimated from that
 */
public record Carcass(
        Basis basis,
        List<String> dressing,
        WeightBand band,
        List<BasisStep> steps,
        List<Grade> grades,
        Predictors predictors) {
    /** Copies the lists. */
    public Carcass {
        dressing = List.copyOf(dressing);
        steps = List.copyOf(steps);
        grades = List.copyOf(grades);
    }

    /**
     * A carcass without grades, on which nothing is measured.
     *
     * @param basis what its weight is taken of
     * @param dressing what is on and off it
     * @param band the weights for which the shares hold
     * @param steps named losses from other bases to this one
     */
    public Carcass(Basis basis, List<String> dressing, WeightBand band, List<BasisStep> steps) {
        this(basis, dressing, band, steps, List.of(), Predictors.NONE);
    }

    /**
     * The grade of a name.
     *
     * @param name any writing of the name
     * @return the first grade so called, if any
     */
    public Optional<Grade> grade(TradeName name) {
        return grades.stream().filter(grade -> grade.name().equals(name)).findFirst();
    }
}
