package dev.gambrel.tree.rules.bench;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Expected;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.inspection.BenchCode;
import dev.gambrel.tree.inspection.Findings;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Portions;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.portion.Measure;
import dev.gambrel.tree.portion.Slicing;
import java.util.function.Consumer;

/** A kerf needs a thickness, and a slice fits into the length that is sliced. */
public final class SlicesFit implements Rule {
    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        Portions.each(inspection, (path, portion) -> {
            checkKerf(path, portion, found);
            portion.aim().targetThickness().ifPresent(thickness -> checkLength(path, portion, thickness, found));
        });
    }

    private static void checkKerf(TreePath path, Portion portion, Consumer<Diagnostic> found) {
        boolean stated = portion.slicing().kerf() instanceof Measure.Stated;
        if (stated && portion.aim().targetThickness().isEmpty()) {
            found.accept(Diagnostic.of(BenchCode.KERF_WITHOUT_THICKNESS, new Place.InTree(path, Aspect.KERF))
                    .with("portion", portion.name())
                    .help("Write how thick a slice is, such as 25 mm thick, or take the kerf out."));
        }
    }

    private static void checkLength(TreePath path, Portion portion, Expected thickness, Consumer<Diagnostic> found) {
        if (portion.slicing().length() instanceof Slicing.Length.Stated length
                && length.expected().exactMean().signum() > 0
                && thickness.exactMean().compareTo(length.expected().exactMean()) > 0) {
            found.accept(Diagnostic.of(BenchCode.SLICE_LONGER_THAN_PIECE, new Place.InTree(path, Aspect.THICKNESS))
                    .with("portion", portion.name())
                    .with("thickness", Findings.meanAsWritten(thickness))
                    .with("length", Findings.meanAsWritten(length.expected()))
                    .related(new Place.InTree(path, Aspect.LENGTH), "the length that is sliced")
                    .help("Write thinner slices, or the length of one whole piece."));
        }
    }
}
