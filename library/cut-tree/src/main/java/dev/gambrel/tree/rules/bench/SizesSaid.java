package dev.gambrel.tree.rules.bench;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Portions;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.TermCode;
import dev.gambrel.tree.portion.Aim;
import java.util.function.Consumer;

/** A house says how large a portion is meant to be; a buyer may lay down limits alone. */
public final class SizesSaid implements Rule {
    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        Portions.each(inspection, (path, portion) -> {
            if (portion.aim() instanceof Aim.Open) {
                found.accept(
                        Diagnostic.of(TermCode.PORTION_WITHOUT_SIZE, new Place.InTree(path, Aspect.NAME))
                                .with("portion", portion.name())
                                .help(
                                        "Write a weight after its name, such as 180 g, a thickness, such as 25 mm thick, or after a comma whole, halved or into 3."));
            }
        });
    }
}
