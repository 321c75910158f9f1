package dev.gambrel.yields.comparison.fact;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.tree.BasisStep;
import dev.gambrel.tree.Carcass;
import dev.gambrel.tree.choice.Grade;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/** The weight that the shares hold for: basis, dressing, band, and the losses on the way to it. */
final class CarcassFacts {
    private CarcassFacts() {}

    static void add(Carcass carcass, Facts facts) {
        facts.reliedOn(
                "weighed", Aspect.NAME, carcass.basis().words(), carcass.basis().words());
        if (!carcass.dressing().isEmpty()) {
            List<String> dressing = carcass.dressing().stream()
                    .map(words -> words.toLowerCase(Locale.ROOT))
                    .sorted()
                    .toList();
            facts.reliedOn("dressing", Aspect.DRESSING, 0, dressing, String.join(", ", carcass.dressing()));
        }
        LimitFacts.band(carcass.band(), facts);
        for (int i = 0; i < carcass.steps().size(); i++) {
            step(carcass.steps().get(i), i, facts);
        }
        for (int i = 0; i < carcass.grades().size(); i++) {
            Grade grade = carcass.grades().get(i);
            facts.reliedOn(
                    "grade " + grade.name().key(),
                    Aspect.GRADE,
                    i,
                    Exact.ordered(grade.values()),
                    Facts.listed(grade.values()));
        }
    }

    private static void step(BasisStep step, int index, Facts facts) {
        List<String> value = new ArrayList<>(List.of(step.loss().key()));
        value.addAll(Exact.of(step.share()));
        String words = step.loss() + " " + step.share();
        if (step.hanging() instanceof BasisStep.Hanging.Daily daily) {
            value.addAll(Exact.of(daily.perDay()));
            value.add(Integer.toString(daily.days()));
            words += ", " + daily.perDay() + " a day for " + daily.days() + (daily.days() == 1 ? " day" : " days");
        }
        String what = "loss from " + step.from().words() + " to " + step.to().words();
        facts.figure(what, Aspect.STEP, index, value, words);
        facts.sources("the " + what, Aspect.STEP, index, step.sources());
    }
}
