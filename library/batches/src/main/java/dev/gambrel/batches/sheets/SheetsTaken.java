package dev.gambrel.batches.sheets;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.yields.cuttingtest.Faults;
import dev.gambrel.yields.cuttingtest.Verdict;
import dev.gambrel.yields.plan.Node;
import dev.gambrel.yields.reconciliation.CutBalance;
import dev.gambrel.yields.reconciliation.GlobalTest;
import dev.gambrel.yields.testedcuts.NamedTest;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;

/**
 * The sheets of one specification that a house takes its shares from. One that does not balance is left out and told, since nobody knows
 * which of its weights is wrong; so is one that was handed in twice.
 *
 * @param reports those that are taken, in order
 * @param findings what was left out, and why; what nothing checks
 */
public record SheetsTaken(List<SheetReport> reports, List<Diagnostic> findings) {
    /** Copies the lists. */
    public SheetsTaken {
        reports = List.copyOf(reports);
        findings = List.copyOf(findings);
    }

    /**
     * Chooses among sheets.
     *
     * @param reports all sheets, of one specification
     * @param evenUnbalanced true to take those too that do not balance
     * @return those that count
     */
    public static SheetsTaken of(List<SheetReport> reports, boolean evenUnbalanced) {
        List<SheetReport> taken = new ArrayList<>();
        List<Diagnostic> findings = new ArrayList<>();
        for (SheetReport report : reports) {
            WeighSheet sheet = report.sheet();
            Place place = new Place.InFile(sheet.name());
            String twin = taken.stream()
                    .map(SheetReport::sheet)
                    .filter(other -> tellsTheSame(other, sheet))
                    .map(WeighSheet::name)
                    .findFirst()
                    .orElse("");
            if (!twin.isEmpty()) {
                findings.add(
                        Diagnostic.of(SharesCode.SHEET_TWICE, place)
                                .with("other", twin)
                                .help(
                                        "Name each cutting test once; a test that counts twice makes spreads look better known."));
            } else if (report.faults().verdict() == Verdict.DOES_NOT_BALANCE && !evenUnbalanced) {
                findings.add(leftOut(report, place));
            } else {
                taken.add(report);
                if (report.faults().verdict() == Verdict.NOT_CHECKED) {
                    findings.add(Diagnostic.of(SharesCode.NOT_CHECKED, place)
                            .help("Weigh a cut as well as all its parts, so that they are held against each other."));
                }
            }
        }
        return new SheetsTaken(taken, findings);
    }

    private static boolean tellsTheSame(WeighSheet one, WeighSheet other) {
        return one.heading().equals(other.heading()) && one.readings().equals(other.readings());
    }

    private static Diagnostic leftOut(SheetReport report, Place place) {
        Faults faults = report.faults();
        GlobalTest test = report.test().reconciled().test();
        List<String> why = new ArrayList<>();
        why.add(String.format(
                Locale.ROOT,
                "chi-square %.1f with %d %s",
                test.chiSquare(),
                test.degreesOfFreedom(),
                test.degreesOfFreedom() == 1 ? "check" : "checks"));
        for (CutBalance more : faults.moreOutThanIn()) {
            Node cut = report.test().plan().node(more.cut());
            why.add(String.format(
                    Locale.ROOT,
                    "%s gave %.3f kg more than it weighed",
                    PlanParts.called(cut),
                    more.excess().mean()));
        }
        if (!faults.explanations().isEmpty()) {
            why.add("a mistake with a pattern explains it");
        }
        return Diagnostic.of(SharesCode.SHEET_LEFT_OUT, place)
                .with("why", String.join("; ", why))
                .help("Look at it with gambrel balance and put it right; --unbalanced takes it as it is.");
    }

    /**
     * What stands on them.
     *
     * @return the sheets that are taken, in order
     */
    public List<WeighSheet> sheets() {
        return reports.stream().map(SheetReport::sheet).toList();
    }

    /**
     * The sheets as cutting tests.
     *
     * @return by the names of their files, in order
     */
    public List<NamedTest> tests() {
        return reports.stream()
                .map(report -> new NamedTest(report.sheet().name(), report.test()))
                .toList();
    }
}
