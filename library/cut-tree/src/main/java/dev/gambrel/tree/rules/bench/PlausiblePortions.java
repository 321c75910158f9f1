package dev.gambrel.tree.rules.bench;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.inspection.BenchCode;
import dev.gambrel.tree.inspection.Findings;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Portions;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.portion.Aim;
import dev.gambrel.tree.portion.Fewest;
import dev.gambrel.tree.portion.Finish;
import dev.gambrel.tree.portion.Measure;
import dev.gambrel.tree.portion.Slicing;
import java.util.List;
import java.util.function.Consumer;

/** Lengths and counts of a portion are more than nothing; kerf and tare are not less. */
public final class PlausiblePortions implements Rule {
    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        Portions.each(inspection, (path, portion) -> {
            checkCounts(path, portion, found);
            checkLengths(path, portion, found);
            checkBinding(path, portion.finish().binding(), found);
            checkLosses(path, portion, found);
        });
    }

    private static void checkCounts(TreePath path, Portion portion, Consumer<Diagnostic> found) {
        if (portion.aim() instanceof Aim.Number aim) {
            checkCount(aim.number(), "portions", new Place.InTree(path, Aspect.NUMBER), found);
        }
        if (portion.acceptance().fewest() instanceof Fewest.From from) {
            checkCount(from.number(), "portions", new Place.InTree(path, Aspect.FEWEST), found);
        }
        if (portion.finish().pack() instanceof Finish.Pack.Together pack) {
            checkCount(pack.number(), "portions to a pack", new Place.InTree(path, Aspect.PACK), found);
        }
    }

    private static void checkLengths(TreePath path, Portion portion, Consumer<Diagnostic> found) {
        portion.aim()
                .targetThickness()
                .ifPresent(thickness -> checkPositive(
                        Findings.meanAsWritten(thickness),
                        "thickness",
                        new Place.InTree(path, Aspect.THICKNESS),
                        found));
        if (portion.slicing().length() instanceof Slicing.Length.Stated length) {
            Quantity mean = Findings.meanAsWritten(length.expected());
            checkPositive(mean, "length that is sliced", new Place.InTree(path, Aspect.LENGTH), found);
        }
    }

    private static void checkBinding(TreePath path, Finish.Binding binding, Consumer<Diagnostic> found) {
        Place at = new Place.InTree(path, Aspect.BINDING);
        if (binding instanceof Finish.Binding.Tied tied) {
            checkCount(tied.times(), "ties", at, found);
        } else if (binding instanceof Finish.Binding.TiedEvery every) {
            checkPositive(every.spacing(), "length from tie to tie", at, found);
        } else if (binding instanceof Finish.Binding.Netted net) {
            checkPositive(net.size(), "size of the net", at, found);
        }
    }

    private static void checkLosses(TreePath path, Portion portion, Consumer<Diagnostic> found) {
        if (portion.slicing().kerf() instanceof Measure.Stated kerf) {
            checkNotNegative(kerf.value(), "kerf", new Place.InTree(path, Aspect.KERF), found);
        }
        if (portion.acceptance().smallest() instanceof Measure.Stated smallest) {
            checkNotNegative(smallest.value(), "smallest piece", new Place.InTree(path, Aspect.SMALLEST), found);
        }
        if (portion.endPieces() instanceof Portion.EndPieces.Weighed ends) {
            Quantity mean = Findings.meanAsWritten(ends.weight());
            checkNotNegative(mean, "weight of the end pieces", new Place.InTree(path, Aspect.END_PIECES), found);
        }
        List<Finish.Tare> tares = portion.finish().tares();
        for (int i = 0; i < tares.size(); i++) {
            Place at = new Place.InTree(path, Aspect.TARE, i);
            checkNotNegative(
                    tares.get(i).weight(), "tare of the " + tares.get(i).what(), at, found);
        }
    }

    private static void checkCount(int number, String what, Place at, Consumer<Diagnostic> found) {
        if (number < 1) {
            found.accept(Diagnostic.of(BenchCode.COUNT_NOT_POSITIVE, at)
                    .with("what", what)
                    .with("number", number)
                    .help("Write how many there are, or take it out."));
        }
    }

    private static void checkPositive(Quantity figure, String what, Place at, Consumer<Diagnostic> found) {
        if (figure.amount().signum() <= 0) {
            found.accept(Diagnostic.of(BenchCode.MEASURE_NOT_POSITIVE, at)
                    .with("what", what)
                    .with("figure", figure)
                    .help("Write it as the measure shows it, with its unit."));
        }
    }

    private static void checkNotNegative(Quantity figure, String what, Place at, Consumer<Diagnostic> found) {
        if (figure.amount().signum() < 0) {
            found.accept(Diagnostic.of(BenchCode.BELOW_NOTHING, at)
                    .with("what", what)
                    .with("figure", figure)
                    .help("Write it without the minus."));
        }
    }
}
