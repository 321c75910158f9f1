package dev.gambrel.tree.rules.estimate;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.estimate.Equation;
import dev.gambrel.tree.estimate.Measure;
import dev.gambrel.tree.estimate.Scale;
import dev.gambrel.tree.inspection.EquationCode;
import dev.gambrel.tree.inspection.Vocabulary;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Consumer;

/** Measures and estimates share no name, neither with each other nor with a carcass weight; nor do the scores of one. */
final class DistinctPredictors {
    private DistinctPredictors() {}

    static void check(Estimates estimates, Consumer<Diagnostic> found) {
        Map<TradeName, Place> first = new HashMap<>();
        List<Measure> measures = estimates.predictors().measures();
        for (int i = 0; i < measures.size(); i++) {
            check(measures.get(i).name(), Estimates.atMeasure(i), first, found);
            checkScores(measures.get(i), Estimates.atMeasure(i), found);
        }
        List<Equation> equations = estimates.equations();
        for (int i = 0; i < equations.size(); i++) {
            check(equations.get(i).name(), Estimates.atEstimate(i), first, found);
        }
    }

    private static void check(TradeName name, Place at, Map<TradeName, Place> first, Consumer<Diagnostic> found) {
        Diagnostic taken =
                Diagnostic.of(EquationCode.NAME_TAKEN, at).with("name", name).help("Choose another name.");
        if (Vocabulary.weight(name).isPresent()) {
            found.accept(taken.with("by", "it is that of a carcass weight, which equations know without a line"));
            return;
        }
        Place earlier = first.putIfAbsent(name, at);
        if (earlier != null) {
            found.accept(taken.with("by", "a measure or estimate is called so already")
                    .related(earlier, "the first"));
        }
    }

    private static void checkScores(Measure measure, Place at, Consumer<Diagnostic> found) {
        if (measure.scale() instanceof Scale.Scored scored) {
            Set<TradeName> words = new HashSet<>();
            for (Scale.Score score : scored.scores()) {
                if (!words.add(score.word())) {
                    found.accept(Diagnostic.of(EquationCode.NAME_TAKEN, at)
                            .with("name", score.word())
                            .with("by", "it is a score of " + measure.name() + " already")
                            .help("Give each score a word of its own."));
                }
            }
        }
    }
}
