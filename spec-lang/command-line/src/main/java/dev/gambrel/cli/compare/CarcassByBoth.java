package dev.gambrel.cli.compare;

import dev.gambrel.cli.compare.report.ComparedFile;
import dev.gambrel.cli.compare.report.ComparisonReport.Weights;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.tree.WeightBand;
import dev.gambrel.yields.CarcassWeight;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.comparison.YieldComparison;
import dev.gambrel.yields.estimate.Measurements;
import dev.gambrel.yields.working.WayUsed;
import dev.gambrel.yields.working.Working;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * One carcass by two specifications.
 *
 * @param asked the carcass that was asked for; none if nothing was said
 * @param working how both are worked
 * @param measured what was measured on it
 * @param findings takes what is found
 */
record CarcassByBoth(List<CarcassWeight> asked, Working working, Measurements measured, List<Diagnostic> findings) {
    Weights of(ComparedFile before, ComparedFile after) {
        if (before.tree().isRequirement() || after.tree().isRequirement()) {
            return new Weights.NotWorkedOut("A requirement has no shares, so that no weights follow from it.");
        }
        Optional<CarcassWeight> carcass =
                asked.stream().findFirst().or(() -> YieldComparison.commonCarcass(before.tree(), after.tree()));
        if (carcass.isEmpty()) {
            return new Weights.NotWorkedOut(
                    "There is no carcass that both are written for: the bases differ, or the weight"
                            + " bands are not stated or have nothing in common. Name one with --weight.");
        }
        Result<ExpectedYields> one = yields(before, carcass.get());
        Result<ExpectedYields> other = yields(after, carcass.get());
        if (one.value().isEmpty() || other.value().isEmpty()) {
            String which = one.value().isPresent() ? "later" : other.value().isPresent() ? "earlier" : "either";
            return new Weights.NotWorkedOut("No figures can be worked out for a carcass of "
                    + carcass.get().mass() + " by the " + which + " specification; the findings say why.");
        }
        YieldComparison lines = YieldComparison.of(one.orElseThrow(), other.orElseThrow());
        List<String> remarks = new ArrayList<>(bands(before, after));
        ways("earlier", one.orElseThrow(), remarks);
        ways("later", other.orElseThrow(), remarks);
        return new Weights.WorkedOut(lines, remarks);
    }

    private Result<ExpectedYields> yields(ComparedFile file, CarcassWeight carcass) {
        Result<ExpectedYields> result = Yields.of(file.tree(), working).forCarcass(carcass, measured);
        findings.addAll(result.diagnostics());
        return result;
    }

    private static List<String> bands(ComparedFile before, ComparedFile after) {
        if (before.tree().carcass().band() instanceof WeightBand.Stated one
                && after.tree().carcass().band() instanceof WeightBand.Stated other
                && (one.low().compareTo(other.low()) != 0 || one.high().compareTo(other.high()) != 0)) {
            return List.of("The weight bands differ: " + one.low() + " to " + one.high() + " before, " + other.low()
                    + " to " + other.high() + " after.");
        }
        return List.of();
    }

    private static void ways(String which, ExpectedYields yields, List<String> remarks) {
        for (WayUsed way : yields.ways()) {
            remarks.add(String.format(
                    Locale.ROOT,
                    "By the %s, %.1f %% of the pieces are worked as %s, because %s.",
                    which,
                    100 * way.split().pieces(),
                    way.path(),
                    way.because()));
        }
    }
}
