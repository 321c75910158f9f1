package dev.gambrel.tree.rules.estimate;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.estimate.Equation;
import dev.gambrel.tree.inspection.EquationCode;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Collectors;

/** No estimate is worked out from itself, whether at once or by way of others. */
final class NoCircles {
    private static final int MOST_NAMED = 12;

    private NoCircles() {}

    static void check(Estimates estimates, Consumer<Diagnostic> found) {
        List<Equation> circle = estimates.order().circle();
        if (circle.isEmpty()) {
            return;
        }
        Equation first = circle.get(0);
        Diagnostic finding = Diagnostic.of(EquationCode.GOES_ROUND, estimates.at(first))
                .with("estimate", first.name())
                .help("Work one of them out from what is measured.");
        found.accept(circle.size() == 1 || circle.size() > MOST_NAMED ? finding : finding.note(round(circle)));
    }

    private static String round(List<Equation> circle) {
        return "It goes round: "
                + circle.stream().map(Equation::name).map(TradeName::text).collect(Collectors.joining(" needs "))
                + " needs " + circle.get(0).name() + ".";
    }
}
