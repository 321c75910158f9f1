package dev.gambrel.compiler.estimate;

import dev.gambrel.compiler.meaning.Located;
import dev.gambrel.tree.estimate.Equation;
import dev.gambrel.tree.estimate.Measure;
import dev.gambrel.tree.estimate.Predictors;
import java.util.ArrayList;
import java.util.List;

/** All measure and estimate lines together. */
public final class PredictorLowering {
    /**
     * What was read, and whether all of it was.
     *
     * @param predictors measures and equations
     * @param inDoubt true if a line could not be read, so that no rule of estimates should be asked
     */
    public record Read(Predictors predictors, boolean inDoubt) {}

    private PredictorLowering() {}

    /**
     * Reads the lines.
     *
     * @param measureLines in the order read
     * @param estimateLines in the order read
     * @return the predictors in the same order, those that cannot be read left out after a finding
     */
    public static Read read(List<Located> measureLines, List<Located> estimateLines) {
        List<Measure> measures = new ArrayList<>();
        List<Equation> equations = new ArrayList<>();
        measureLines.forEach(line -> MeasureLowering.measure(line).ifPresent(measures::add));
        estimateLines.forEach(line -> EquationLowering.equation(line).ifPresent(equations::add));
        boolean all = measures.size() == measureLines.size() && equations.size() == estimateLines.size();
        return new Read(new Predictors(measures, equations), !all);
    }
}
