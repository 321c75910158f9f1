package dev.gambrel.tree.rules.bench;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.inspection.BenchCode;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Portions;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.portion.Precedence;
import java.util.function.Consumer;

/** Where both weight and thickness are written, one of them rules; where only one is, there is nothing to rule over. */
public final class PrecedenceSaid implements Rule {
    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        Portions.each(inspection, (path, portion) -> check(path, portion, found));
    }

    private static void check(TreePath path, Portion portion, Consumer<Diagnostic> found) {
        Precedence said = portion.acceptance().precedence();
        if (portion.speaksOfWeight() && portion.speaksOfThickness()) {
            if (said == Precedence.NOT_STATED) {
                found.accept(Diagnostic.of(BenchCode.PRECEDENCE_NOT_STATED, new Place.InTree(path, Aspect.NAME))
                        .with("portion", portion.name())
                        .note("A muscle that is wider or narrower than both figures make it cannot keep both.")
                        .help("Say which is kept: weight rules, or thickness rules."));
            }
        } else if (said != Precedence.NOT_STATED) {
            found.accept(Diagnostic.of(BenchCode.PRECEDENCE_OF_ONE, new Place.InTree(path, Aspect.PRECEDENCE))
                    .with("rules", said.words())
                    .with("portion", portion.name())
                    .with("other", portion.speaksOfWeight() ? "thickness" : "weight")
                    .help("Take it out, or write the figure that gives way to it."));
        }
    }
}
