package dev.gambrel.cli.estimate;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.diagnostic.Visible;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.estimate.Equation;
import dev.gambrel.yields.estimate.Estimated;
import dev.gambrel.yields.estimate.Estimator;
import dev.gambrel.yields.estimate.Measurements;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Every estimate with its value, or with what has to be measured first.
 *
 * @param text the lines
 * @param findings what was found in working them out
 */
record EstimateReport(String text, List<Diagnostic> findings) {
    static final EstimateReport NONE = new EstimateReport("", List.of());

    private static final int PLACES = 4;
    private static final int MOST_NAMES = 40;

    /** Copies the list. */
    EstimateReport {
        findings = List.copyOf(findings);
    }

    static EstimateReport of(CutTree tree, Measurements given) {
        Estimator estimator = Estimator.of(tree);
        StringBuilder text = new StringBuilder();
        Set<Diagnostic> findings = new LinkedHashSet<>();
        Map<TradeName, Result<Estimated>> results = estimator.all(given);
        for (Equation equation : estimator.predictors().equations()) {
            text.append(Visible.text(equation.name().text())).append("\n  ");
            Result<Estimated> result = results.get(equation.name());
            if (result == null) {
                text.append("needs ").append(names(missing(estimator.needs(equation.name()), given)));
            } else {
                findings.addAll(result.diagnostics());
                text.append(result.value().map(EstimateReport::line).orElse("cannot be worked out"));
            }
            text.append(sources(equation, tree)).append("\n");
        }
        return new EstimateReport(
                text.isEmpty() ? "Nothing is estimated here.\n" : text.toString(), List.copyOf(findings));
    }

    private static List<TradeName> missing(List<TradeName> needed, Measurements given) {
        return needed.stream().filter(name -> given.reading(name).isEmpty()).toList();
    }

    private static String line(Estimated estimated) {
        String spread = estimated.equation().spread() instanceof Equation.Residual.Stated stated
                ? " ± " + stated.deviation()
                : ", spread not stated";
        return rounded(estimated.value()) + spread;
    }

    private static Quantity rounded(Quantity value) {
        BigDecimal amount = value.amount();
        return amount.scale() <= PLACES
                ? value
                : new Quantity(amount.setScale(PLACES, RoundingMode.HALF_UP), value.unit());
    }

    private static String names(List<TradeName> names) {
        String first = names.stream()
                .limit(MOST_NAMES)
                .map(TradeName::text)
                .map(Visible::text)
                .collect(Collectors.joining(", "));
        return names.size() > MOST_NAMES ? first + " and " + (names.size() - MOST_NAMES) + " more" : first;
    }

    /** A source that is only remembered is told to be one. */
    private static String sources(Equation equation, CutTree tree) {
        String sources = equation.sources().stream()
                .map(name -> Visible.text(name.text())
                        + tree.source(name)
                                .map(source -> " (" + source.kind().words() + ")")
                                .orElse(""))
                .collect(Collectors.joining(", "));
        return sources.isEmpty() ? "" : "; source: " + sources;
    }
}
