package dev.gambrel.yields.estimate;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.estimate.Equation;
import dev.gambrel.tree.estimate.Predictors;
import dev.gambrel.tree.inspection.EquationOrder;
import dev.gambrel.tree.inspection.Vocabulary;
import dev.gambrel.tree.inspection.Vocabulary.Meaning;
import java.util.ArrayList;
import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;

/**
 * The estimates of a specification, ready to be worked out.
 *
 * <pre>{@code
 * Result<Estimated> grade = Estimator.of(tree).estimate(TradeName.of("yield grade"), given);
 * }</pre>
 *
 * <p>Arithmetic is exact, whatever units readings are in. Immutable; safe between threads.
 */
public final class Estimator {
    private final Predictors predictors;
    private final Vocabulary vocabulary;
    private final List<Equation> sorted;

    private Estimator(Predictors predictors) {
        this.predictors = predictors;
        this.vocabulary = new Vocabulary(predictors);
        this.sorted = new EquationOrder(predictors.equations(), vocabulary).sorted();
    }

    /**
     * Makes the estimates of a specification ready.
     *
     * @param tree a tree in which {@link dev.gambrel.tree.rules.TreeRules} finds no error
     * @return what works them out
     */
    public static Estimator of(CutTree tree) {
        return new Estimator(tree.carcass().predictors());
    }

    /**
     * What is measured and what is estimated.
     *
     * @return the predictors of the specification
     */
    public Predictors predictors() {
        return predictors;
    }

    /**
     * What has to be measured for an estimate, whether it is named at once or by way of other estimates.
     *
     * @param estimate the name of an estimate
     * @return measures and carcass weights, as they are first named; empty for a name that is no estimate
     */
    public List<TradeName> needs(TradeName estimate) {
        Set<TradeName> needed = new LinkedHashSet<>();
        for (Equation equation : using(estimate)) {
            for (TradeName name : EquationOrder.names(equation)) {
                if (!(vocabulary.meaning(name).orElse(null) instanceof Meaning.Estimated)) {
                    needed.add(Measurements.plain(name));
                }
            }
        }
        return List.copyOf(needed);
    }

    /** The equation of an estimate and those that it stands on, each after those that it names. */
    private List<Equation> using(TradeName estimate) {
        Set<TradeName> wanted = new LinkedHashSet<>(Set.of(estimate));
        List<Equation> using = new ArrayList<>();
        for (int i = sorted.size() - 1; i >= 0; i--) {
            Equation equation = sorted.get(i);
            if (wanted.contains(equation.name())) {
                wanted.addAll(EquationOrder.names(equation));
                using.add(equation);
            }
        }
        Collections.reverse(using);
        return using;
    }

    /**
     * Works out one estimate for one carcass.
     *
     * @param estimate its name
     * @param given what was measured; readings that the estimate does not need are not looked at
     * @return the value, with a warning for every reading outside a range that is stated; or an error of {@link
     *     MeasurementCode}
     * @throws IllegalArgumentException if there is no such estimate, or if a rule of estimates is broken
     */
    public Result<Estimated> estimate(TradeName estimate, Measurements given) {
        List<Equation> using = using(estimate);
        if (using.isEmpty()) {
            throw new IllegalArgumentException("no estimate called " + estimate);
        }
        List<Diagnostic> found = new ArrayList<>();
        for (TradeName name : needs(estimate)) {
            found.addAll(ReadingCheck.of(name, estimate, vocabulary, given));
        }
        using.forEach(equation -> found.addAll(RangeCheck.of(equation, given)));
        return Result.hasError(found) ? Result.failed(found) : new Working(vocabulary, given).result(using, found);
    }

    /**
     * Works out every estimate of which all is given, each once. Costs what the equations cost, O(names in them) beside.
     *
     * @param given what was measured
     * @return the value of each, with warnings for readings outside its own ranges, or an error of {@link MeasurementCode};
     *     without a finding where another estimate that it stands on failed; nothing of an estimate that lacks a reading
     */
    public Map<TradeName, Result<Estimated>> all(Measurements given) {
        Working working = new Working(vocabulary, given);
        Map<TradeName, Result<Estimated>> results = new LinkedHashMap<>();
        for (Equation equation : sorted) {
            List<TradeName> estimates = new ArrayList<>();
            List<TradeName> readings = new ArrayList<>();
            for (TradeName name : EquationOrder.names(equation)) {
                boolean estimated = vocabulary.meaning(name).orElse(null) instanceof Meaning.Estimated;
                (estimated ? estimates : readings).add(name);
            }
            boolean ready = results.keySet().containsAll(estimates)
                    && readings.stream().allMatch(name -> given.reading(name).isPresent());
            if (ready) {
                boolean sound = estimates.stream()
                        .allMatch(name -> results.get(name).value().isPresent());
                results.put(
                        equation.name(), sound ? next(equation, readings, given, working) : Result.failed(List.of()));
            }
        }
        return results;
    }

    private Result<Estimated> next(Equation equation, List<TradeName> readings, Measurements given, Working working) {
        List<Diagnostic> found = new ArrayList<>();
        readings.forEach(name -> found.addAll(ReadingCheck.of(name, equation.name(), vocabulary, given)));
        found.addAll(RangeCheck.of(equation, given));
        return Result.hasError(found) ? Result.failed(found) : working.next(equation, found);
    }

    /**
     * What was given that cannot be a reading here.
     *
     * @param given what was measured
     * @return a finding for each name that is neither a measure nor a carcass weight, and for each reading of another kind
     */
    public List<Diagnostic> check(Measurements given) {
        List<Diagnostic> found = new ArrayList<>();
        given.readings().keySet().forEach(name -> found.addAll(ReadingCheck.known(name, vocabulary, given)));
        return found;
    }
}
