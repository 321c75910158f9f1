package dev.gambrel.fuzzing;

import dev.gambrel.batches.sheets.PriceList;
import dev.gambrel.batches.sheets.SheetReport;
import dev.gambrel.batches.sheets.WeighSheet;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.reports.page.CuttingTestPage;
import dev.gambrel.text.SourceText;
import dev.gambrel.tree.CutTree;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.cuttingtest.CuttingTest;
import dev.gambrel.yields.drift.Baseline;
import dev.gambrel.yields.drift.CutDrift;
import dev.gambrel.yields.drift.Drift;
import dev.gambrel.yields.drift.DriftSentences;
import dev.gambrel.yields.drift.LabelledTest;
import dev.gambrel.yields.plan.YieldPlan;
import dev.gambrel.yields.reconciliation.Reconciled;
import dev.gambrel.yields.testedcuts.NamedTest;
import dev.gambrel.yields.testedcuts.TestedCuts;
import dev.gambrel.yields.working.Working;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** A weigh sheet: it is read or refused, what is read balances, and nothing on it runs on a page. The same bytes are a price list too. */
public final class SheetsTarget {
    private static final double ROUNDING = 1e-9;

    private static final CutTree TREE = new SpecCompiler()
            .compile(new SourceText("sheet.cuts", """
                    language 1
                    use "catalogue:sheep"
                    specification "Marram hogget" revision 3 for sheep
                    carcass cold, 20 kg to 24 kg
                    stream mince, saleable
                    stream bones, by-product
                    cut leg, two per carcass, 33 % ± 0.9 % {
                      bone femur and patella 7.4 % ± 0.4 % -> bones
                      cut topside 20 % ± 1 % {
                        trim fat to at most 3 mm at any point 4 % ± 1 % -> mince
                      }
                      loss drip and saw 0.5 % ± 0.1 %
                      rest -> mince
                    }
                    cut neck, 4 % ± 0.3 %
                    loss drip and saw 0.5 % ± 0.1 %
                    rest -> mince
                    """), Sources.none())
            .orElseThrow()
            .tree();

    private static final YieldPlan PLAN = Yields.of(TREE, Working.AS_WRITTEN)
            .forTypicalCarcass()
            .orElseThrow()
            .plan();

    private SheetsTarget() {}

    /**
     * Holds one file to it.
     *
     * @param file any bytes
     */
    public static void fuzzerTestOneInput(byte[] file) {
        SourceText text = new SourceText("sheet.csv", new String(file, StandardCharsets.UTF_8));
        FindingsHold.all(PriceList.read(text, PLAN).diagnostics());
        Result<WeighSheet> sheet = WeighSheet.read(text, TREE, Working.AS_WRITTEN);
        FindingsHold.all(sheet.diagnostics());
        sheet.value().map(SheetReport::of).ifPresent(report -> {
            addsUp(report.test(), report.test().plan());
            standsStill(CuttingTestPage.of(List.of(report), List.of()));
            saysItsShares(report);
        });
    }

    private static void addsUp(CuttingTest test, YieldPlan plan) {
        for (int v = 0; v < plan.size(); v++) {
            double parts = 0;
            double size = 0;
            for (int part = plan.firstPart(v); part < plan.firstPart(v + 1); part++) {
                double weight = weight(test, part);
                parts += weight;
                size += Math.abs(weight);
            }
            double whole = weight(test, v);
            double gap = parts - whole;
            boolean isTold = plan.isEnd(v)
                    || Double.isNaN(gap)
                    || Math.abs(gap) <= ROUNDING * (size + Math.abs(whole))
                    || !test.reconciled().contradictions().isEmpty();
            Holds.isTrue(isTold, () -> "parts of " + whole + " kg are off by " + gap);
        }
    }

    private static double weight(CuttingTest test, int node) {
        return test.reconciled().weight(node) instanceof Reconciled.Weight known
                ? known.estimate().mean()
                : Double.NaN;
    }

    private static void standsStill(String page) {
        for (String running : List.of("<script", "<img", "<iframe", " href=", " src=", " onload=", "javascript:")) {
            Holds.isTrue(!page.contains(running), () -> "a page with " + running);
        }
    }

    private static void saysItsShares(SheetReport report) {
        List<LabelledTest> tests = List.of(
                new LabelledTest("one", report.sheet().heading().cutter(), "", report.test()),
                new LabelledTest("two", "", report.sheet().heading().lot(), report.test()));
        Drift drift = Drift.of(tests, new Baseline.AllTests());
        DriftSentences sentences = new DriftSentences(drift);
        for (CutDrift cut : drift.cuts()) {
            Holds.isSame(List.of(), sentences.of(cut), "what moves between a sheet and itself");
        }
        TestedCuts.of(TREE, List.of(new NamedTest(report.sheet().name(), report.test())));
    }
}
