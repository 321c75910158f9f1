package dev.gambrel.yields;

import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.BasisStep;
import dev.gambrel.tree.Carcass;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Stream;

/** Which bases lead to the specification's by its named losses, and by which. */
public final class BasisChains {
    private BasisChains() {}

    /**
     * For each basis the shortest chain of steps, the one declared first of equals; no steps for the specification's own.
     *
     * @param carcass the carcass of a specification
     * @return the losses in turn, by the basis that they begin with; a basis from which none lead is left out
     */
    public static Map<Basis, List<BasisStep>> of(Carcass carcass) {
        Map<Basis, List<BasisStep>> reached = new EnumMap<>(Basis.class);
        reached.put(carcass.basis(), List.of());
        for (int length = 0; length < Basis.values().length; length++) {
            Map<Basis, List<BasisStep>> before = new EnumMap<>(reached);
            for (BasisStep step : carcass.steps()) {
                List<BasisStep> rest = before.get(step.to());
                if (rest != null) {
                    reached.putIfAbsent(
                            step.from(),
                            Stream.concat(losses(step), rest.stream()).toList());
                }
            }
        }
        return reached;
    }

    /** The loss of a step and then, as a step that stays where it is, what is lost while the carcass hangs. */
    private static Stream<BasisStep> losses(BasisStep step) {
        if (!(step.hanging() instanceof BasisStep.Hanging.Daily daily)) {
            return Stream.of(step);
        }
        TradeName name = TradeName.of("hanging, " + daily.days() + (daily.days() == 1 ? " day" : " days"));
        return Stream.of(step, new BasisStep(step.to(), step.to(), name, HangingLoss.of(daily)));
    }
}
