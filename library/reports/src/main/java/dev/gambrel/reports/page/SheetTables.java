package dev.gambrel.reports.page;

import dev.gambrel.batches.sheets.SheetReport;
import dev.gambrel.reports.markup.Markup;
import dev.gambrel.yields.cuttingtest.PartComparison;
import dev.gambrel.yields.cuttingtest.RoundedBalance;
import dev.gambrel.yields.cuttingtest.wording.PartNames;
import dev.gambrel.yields.cuttingtest.wording.Written;
import dev.gambrel.yields.plan.YieldPlan;
import dev.gambrel.yields.reconciliation.CutBalance;
import dev.gambrel.yields.reconciliation.Reconciled;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;

/** The figures of a sheet: what was weighed, in against out, in balance. */
final class SheetTables {
    private static final String NOTE = "z is the difference in standard deviations, those of the scales and of the"
            + " specification together. What is expected is what a carcass of the weight on the sheet should give. Weights in"
            + " balance add up to what they are cut from as they are shown; every other figure is rounded on its own.";
    private static final int GRAMS = 3;

    private final Markup out;
    private final SheetReport report;
    private final YieldPlan plan;
    private final List<Integer> order = new ArrayList<>();

    SheetTables(Markup out, SheetReport report) {
        this.out = out;
        this.report = report;
        this.plan = report.test().plan();
        addFromTop(0);
    }

    private void addFromTop(int node) {
        order.add(node);
        for (int part = plan.firstPart(node); part < plan.firstPart(node + 1); part++) {
            addFromTop(part);
        }
    }

    void write() {
        weighed();
        inAgainstOut();
        balanced();
        out.element("p", NOTE, "class", "note");
    }

    private void begin(String title, String... columns) {
        out.element("h2", title);
        out.open("table", "class", "figures").open("thead").open("tr");
        for (String column : columns) {
            out.element("th", column, "scope", "col");
        }
        out.close().close().open("tbody");
    }

    private void row(int node, String... cells) {
        out.open("tr").element("th", PartNames.address(plan, node), "scope", "row");
        for (String cell : cells) {
            out.element("td", cell);
        }
        out.close();
    }

    private void end() {
        out.close().close();
    }

    private void weighed() {
        double carcass = report.sheet().heading().carcass().mass().value();
        Map<Integer, PartComparison> parts =
                report.weighed().stream().collect(Collectors.toMap(PartComparison::node, Function.identity()));
        begin("Weighed, in kg", "part", "weighed", "expected", "difference", "z", "% of carcass", "expected %");
        for (int v : order) {
            if (parts.containsKey(v)) {
                PartComparison part = parts.get(v);
                row(
                        v,
                        Written.kilograms(part.weighed().mean()),
                        part.isStated() ? Written.kilograms(part.expected().mean()) : "-",
                        Written.more(part.difference()),
                        Written.deviations(part.z()),
                        Written.percent(part.weighed().mean() / carcass),
                        part.isStated() ? Written.percent(part.expected().mean() / carcass) : "-");
            }
        }
        end();
    }

    private void inAgainstOut() {
        List<CutBalance> balances = report.test().reconciled().balances();
        if (balances.isEmpty()) {
            return;
        }
        begin("In against out, in kg", "cut", "in", "out", "difference", "z");
        for (CutBalance balance : balances) {
            double in = report.test().reconciled().readings().weight(balance.cut());
            row(
                    balance.cut(),
                    Written.kilograms(in),
                    Written.kilograms(in + balance.excess().mean()),
                    Written.more(balance.excess().mean()),
                    Written.deviations(balance.z()));
        }
        end();
    }

    private void balanced() {
        RoundedBalance rounded = RoundedBalance.of(report.test(), GRAMS);
        begin("In balance, in kg", "part", "weight", "1 sd", "% of cut", "how");
        for (int v : order) {
            if (report.test().reconciled().weight(v) instanceof Reconciled.Weight known) {
                row(
                        v,
                        rounded.weight(v).toPlainString(),
                        Written.deviation(known.estimate().spread().variance()),
                        share(v),
                        report.test().reading(v).isPresent() ? "weighed" : "worked out");
            }
        }
        end();
    }

    private String share(int node) {
        return node == 0
                ? ""
                : report.test()
                        .share(node)
                        .map(share -> Written.percent(share.ofMeans()))
                        .orElse("-");
    }
}
