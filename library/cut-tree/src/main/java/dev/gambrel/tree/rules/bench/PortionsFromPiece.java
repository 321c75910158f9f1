package dev.gambrel.tree.rules.bench;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.quantity.Expected;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.WeightBand;
import dev.gambrel.tree.inspection.BenchCode;
import dev.gambrel.tree.inspection.Findings;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Site;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.tree.portion.Measure;
import dev.gambrel.tree.portion.MuscleArea;
import dev.gambrel.tree.portion.Slicing;
import java.util.Locale;
import java.util.function.Consumer;

/** A piece gives at least one portion, and its muscle is as large as weight and thickness of a portion make it. */
public final class PortionsFromPiece implements Rule {
    /** Nothing strays further than so many standard deviations: 99.9 % of a normal distribution lie below. */
    private static final double FURTHEST = 3;
    /** A muscle tapers, and its density is a round figure: so much is let pass. Judgement, no source. */
    private static final double LET_PASS = 1.25;

    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        for (Site site : inspection.sites()) {
            if (!site.isCarcass()
                    && !site.cut().portions().isEmpty()
                    && !site.cut().isDivided()) {
                PieceOfBand.of(site, inspection).ifPresent(piece -> {
                    WeightBand.Stated band =
                            (WeightBand.Stated) inspection.tree().carcass().band();
                    for (Portion portion : site.cut().portions()) {
                        checkWeight(site, portion, piece, band, found);
                        checkMuscle(site, portion, piece, band, found);
                    }
                });
            }
        }
    }

    private static void checkWeight(
            Site site, Portion portion, PieceOfBand piece, WeightBand.Stated band, Consumer<Diagnostic> found) {
        if (portion.isByThickness() || portion.aim().targetWeight().isEmpty()) {
            return;
        }
        Expected target = portion.aim().targetWeight().get();
        double last = portion.acceptance().smallest() instanceof Measure.Stated smallest
                ? smallest.value().value()
                : target.mean();
        double ends = portion.endPieces() instanceof Portion.EndPieces.Weighed e
                ? e.weight().mean()
                : 0;
        if (piece.heaviest() * (1 + FURTHEST * piece.relativeSpread()) < last + ends) {
            found.accept(Diagnostic.of(BenchCode.NO_PORTION_FROM_PIECE, at(site, portion, Aspect.SHARE))
                    .with("portion", portion.name())
                    .with("target", Findings.meanAsWritten(target))
                    .with("cut", site.name())
                    .with("carcass", band.high())
                    .with("piece", weight(piece.heaviest()))
                    .related(new Place.InTree(site.path(), Aspect.SHARE), "the share that the piece comes from")
                    .help("Write a smaller portion, or the share of the cut anew."));
        }
    }

    private static void checkMuscle(
            Site site, Portion portion, PieceOfBand piece, WeightBand.Stated band, Consumer<Diagnostic> found) {
        if (!(portion.slicing().length() instanceof Slicing.Length.Stated stated)
                || stated.expected().mean() <= 0) {
            return;
        }
        double length = stated.expected().mean();
        double small = MuscleArea.ofPiece(piece.lightest(), length);
        double large = MuscleArea.ofPiece(piece.heaviest(), length);
        MuscleArea.accepted(portion.aim(), portion.acceptance())
                .filter(area -> small > LET_PASS * area.most() || LET_PASS * large < area.least())
                .ifPresent(area -> {
                    double weight = portion.aim().targetWeight().orElseThrow().mean();
                    boolean isLimited = !(portion.acceptance().thickness() instanceof Limit.NotStated);
                    Aspect thickness = isLimited ? Aspect.THICKNESS_LIMIT : Aspect.THICKNESS;
                    found.accept(Diagnostic.of(BenchCode.MUSCLE_DOES_NOT_FIT, at(site, portion, thickness))
                            .with("portion", portion.name())
                            .with("needed", needed(area))
                            .with("cut", site.name())
                            .with("small", rounded(small))
                            .with("large", rounded(large))
                            .related(at(site, portion, Aspect.SHARE), "the weight")
                            .related(at(site, portion, Aspect.LENGTH), "the length of the piece")
                            .note("A carcass of " + band.low() + " to " + band.high() + " gives a piece of "
                                    + weight(piece.lightest()) + " to " + weight(piece.heaviest())
                                    + "; a cubic centimetre weighs 1.05 g (common practice).")
                            .help(Findings.meanAsWritten(
                                            portion.aim().targetWeight().orElseThrow())
                                    + " of this muscle is a slice of "
                                    + rounded(MuscleArea.thickness(weight, large)) + " mm to "
                                    + rounded(MuscleArea.thickness(weight, small))
                                    + " mm: write one of the two figures anew, or the length."));
                });
    }

    private static String needed(MuscleArea area) {
        if (Double.isInfinite(area.most())) {
            return "at least " + rounded(area.least());
        } else if (area.least() == 0) {
            return "at most " + rounded(area.most());
        }
        String least = rounded(area.least());
        String most = rounded(area.most());
        return least.equals(most) ? most : least + " to " + most;
    }

    private static Place at(Site site, Portion portion, Aspect aspect) {
        return new Place.InTree(site.path().then(portion.name()), aspect);
    }

    private static String weight(double kilograms) {
        return kilograms < 1
                ? String.format(Locale.ROOT, "%.0f g", 1000 * kilograms)
                : String.format(Locale.ROOT, "%.2f kg", kilograms);
    }

    private static String rounded(double figure) {
        return String.format(Locale.ROOT, figure < 20 ? "%.1f" : "%.0f", figure);
    }
}
