package dev.gambrel.tree.rules.estimate;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.estimate.Equation;
import dev.gambrel.tree.estimate.Predictors;
import dev.gambrel.tree.inspection.EquationOrder;
import dev.gambrel.tree.inspection.Vocabulary;
import java.util.List;

/**
 * The estimates of a tree with what their rules look up, found once.
 *
 * @param predictors measures and equations
 * @param vocabulary what their names stand for
 * @param order each equation after those that it names
 */
record Estimates(Predictors predictors, Vocabulary vocabulary, EquationOrder order) {
    static Estimates of(Predictors predictors) {
        Vocabulary vocabulary = new Vocabulary(predictors);
        return new Estimates(predictors, vocabulary, new EquationOrder(predictors.equations(), vocabulary));
    }

    List<Equation> equations() {
        return predictors.equations();
    }

    Place.InTree at(Equation equation) {
        return atEstimate(equations().indexOf(equation));
    }

    static Place.InTree atEstimate(int index) {
        return new Place.InTree(TreePath.ROOT, Aspect.ESTIMATE, index);
    }

    static Place.InTree atMeasure(int index) {
        return new Place.InTree(TreePath.ROOT, Aspect.MEASURE, index);
    }

    /** One figure or name of an equation, counted as written. */
    static Place.InTree atTerm(Equation equation, int index) {
        return new Place.InTree(TreePath.ROOT.then(equation.name()), Aspect.TERM, index);
    }
}
