package dev.gambrel.tree.inspection;

import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.estimate.Equation;
import dev.gambrel.tree.estimate.Measure;
import dev.gambrel.tree.estimate.Predictors;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** What the names in equations stand for. Looked over once, O(measures and equations). */
public final class Vocabulary {
    private static final List<String> WEIGHT = List.of(" carcass weight", " weight", " carcass");

    private final Map<TradeName, Meaning> meanings = new HashMap<>();
    private final List<TradeName> names = new ArrayList<>();

    /** What one name stands for. */
    public sealed interface Meaning {
        /**
         * A measure.
         *
         * @param measure the measure
         */
        record Measured(Measure measure) implements Meaning {}

        /**
         * Another estimate.
         *
         * @param equation its equation
         */
        record Estimated(Equation equation) implements Meaning {}

        /**
         * The weight of the carcass.
         *
         * @param basis what it is taken of
         */
        record Weighed(Basis basis) implements Meaning {}
    }

    /**
     * The names of some predictors; of two that share a name, the first.
     *
     * @param predictors measures and equations
     */
    public Vocabulary(Predictors predictors) {
        predictors.measures().forEach(measure -> add(measure.name(), new Meaning.Measured(measure)));
        predictors.equations().forEach(equation -> add(equation.name(), new Meaning.Estimated(equation)));
    }

    private void add(TradeName name, Meaning meaning) {
        meanings.putIfAbsent(name, meaning);
        names.add(name);
    }

    /**
     * What a name stands for.
     *
     * @param name any writing of it; "warm weight", "hot carcass weight" and "warm carcass" are one weight
     * @return a carcass weight, a measure or an equation, or nothing
     */
    public Optional<Meaning> meaning(TradeName name) {
        return weight(name).<Meaning>map(Meaning.Weighed::new).or(() -> Optional.ofNullable(meanings.get(name)));
    }

    /**
     * Every name that is declared.
     *
     * @return measures, then equations
     */
    public List<TradeName> names() {
        return List.copyOf(names);
    }

    /**
     * The basis of the carcass weight that a name speaks of.
     *
     * @param name any name
     * @return for example warm for "hot carcass weight", or nothing
     */
    public static Optional<Basis> weight(TradeName name) {
        for (String ending : WEIGHT) {
            if (name.key().endsWith(ending)) {
                String basis = name.key().substring(0, name.key().length() - ending.length());
                return Basis.of(basis);
            }
        }
        return Optional.empty();
    }
}
