package dev.gambrel.tree.rules.estimate;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.estimate.Adjustment;
import dev.gambrel.tree.estimate.Equation;
import dev.gambrel.tree.estimate.Expression;
import dev.gambrel.tree.estimate.Scale;
import dev.gambrel.tree.inspection.EquationCode;
import dev.gambrel.tree.inspection.EquationOrder;
import dev.gambrel.tree.inspection.Findings;
import dev.gambrel.tree.inspection.Terms;
import dev.gambrel.tree.inspection.Vocabulary;
import dev.gambrel.tree.inspection.Vocabulary.Meaning;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Every name in an equation, its ranges and its conditions stands for something. */
final class KnownTerms {
    private final Estimates estimates;
    private final Consumer<Diagnostic> found;

    private KnownTerms(Estimates estimates, Consumer<Diagnostic> found) {
        this.estimates = estimates;
        this.found = found;
    }

    static void check(Estimates estimates, Consumer<Diagnostic> found) {
        KnownTerms rule = new KnownTerms(estimates, found);
        List<Equation> equations = estimates.equations();
        for (int i = 0; i < equations.size(); i++) {
            rule.check(equations.get(i), Estimates.atEstimate(i));
        }
    }

    private void check(Equation equation, Place at) {
        List<Expression> terms = Terms.of(equation.expression()).all();
        for (int i = 0; i < terms.size(); i++) {
            if (terms.get(i) instanceof Expression.Named named) {
                checkKnown(named.name(), equation, Estimates.atTerm(equation, i));
            }
        }
        for (Equation.Held held : equation.held()) {
            checkKnown(held.of(), equation, at);
        }
        for (Adjustment adjustment : equation.adjustments()) {
            EquationOrder.condition(adjustment).ifPresent(scored -> checkScore(scored, equation, at));
        }
    }

    private void checkKnown(TradeName name, Equation equation, Place at) {
        Vocabulary vocabulary = estimates.vocabulary();
        if (vocabulary.meaning(name).isEmpty()) {
            List<TradeName> known = new ArrayList<>(vocabulary.names());
            known.remove(equation.name());
            known.add(TradeName.of("warm weight"));
            known.add(TradeName.of("cold weight"));
            Diagnostic finding = Diagnostic.of(EquationCode.UNKNOWN_TERM, at)
                    .with("name", name)
                    .with("estimate", equation.name());
            found.accept(Findings.suggest(finding, name, known)
                    .help("Declare what is measured: measure " + name + ", in mm"));
        }
    }

    private void checkScore(Adjustment.Condition.Scored when, Equation equation, Place at) {
        checkKnown(when.measure(), equation, at);
        estimates.vocabulary().meaning(when.measure()).ifPresent(meaning -> {
            List<TradeName> words = words(meaning);
            if (!words.contains(when.word())) {
                found.accept(Findings.suggest(
                        Diagnostic.of(EquationCode.UNKNOWN_SCORE, at)
                                .with("word", when.word())
                                .with("measure", when.measure())
                                .help("Scores are declared with the measure: measure muscling, 1 = thin, 2 = average"),
                        when.word(),
                        words));
            }
        });
    }

    private static List<TradeName> words(Meaning meaning) {
        return meaning instanceof Meaning.Measured measured
                        && measured.measure().scale() instanceof Scale.Scored scored
                ? scored.scores().stream().map(Scale.Score::word).toList()
                : List.of();
    }
}
