package dev.gambrel.cli.balance;

import dev.gambrel.batches.sheets.SheetHeading;
import dev.gambrel.batches.sheets.SheetReport;
import dev.gambrel.cli.terminal.Grid;
import dev.gambrel.diagnostic.Visible;
import dev.gambrel.yields.cuttingtest.PartComparison;
import dev.gambrel.yields.cuttingtest.Verdict;
import dev.gambrel.yields.cuttingtest.WhereItWent.Share;
import dev.gambrel.yields.cuttingtest.wording.FaultText;
import dev.gambrel.yields.cuttingtest.wording.PartNames;
import dev.gambrel.yields.cuttingtest.wording.VerdictText;
import dev.gambrel.yields.cuttingtest.wording.Written;
import dev.gambrel.yields.plan.YieldPlan;
import dev.gambrel.yields.reconciliation.CutBalance;
import dev.gambrel.yields.reconciliation.Reconciled;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** A sheet as it is read: what was weighed, whether it adds up, what may be wrong, the weights in balance, where it went. */
final class BalanceText {
    private final SheetReport report;
    private final YieldPlan plan;
    private final List<Integer> order;
    private final StringBuilder out = new StringBuilder();

    private BalanceText(SheetReport report) {
        this.report = report;
        this.plan = report.test().plan();
        this.order = fromTop();
    }

    static String of(SheetReport report) {
        BalanceText text = new BalanceText(report);
        text.heading();
        text.weighed();
        text.inAgainstOut();
        text.verdict();
        text.balanced();
        text.whereItWent();
        return text.out.toString();
    }

    private void line(String line) {
        out.append(line).append('\n');
    }

    /** Each cut is followed by all below it, as in every other table. */
    private List<Integer> fromTop() {
        List<Integer> order = new ArrayList<>();
        addFromTop(0, order);
        return order;
    }

    private void addFromTop(int node, List<Integer> order) {
        order.add(node);
        for (int part = plan.firstPart(node); part < plan.firstPart(node + 1); part++) {
            addFromTop(part, order);
        }
    }

    private void heading() {
        SheetHeading heading = report.sheet().heading();
        List<String> said = new ArrayList<>();
        said.add(heading.carcass().mass() + " " + heading.carcass().basis().words());
        add(said, "", heading.date());
        add(said, "lot ", heading.lot());
        add(said, "cutter ", heading.cutter());
        line(Visible.text(report.sheet().name() + ": " + String.join(", ", said)));
        line("");
    }

    private static void add(List<String> said, String word, String value) {
        if (!value.isEmpty()) {
            said.add(word + value);
        }
    }

    private String address(int node) {
        return PartNames.address(plan, node);
    }

    private void weighed() {
        double carcass = report.sheet().heading().carcass().mass().value();
        Grid grid = new Grid()
                .row("Weighed, in kg", "weighed", "expected", "difference", "z", "% of carcass", "expected %");
        Map<Integer, PartComparison> parts =
                report.weighed().stream().collect(Collectors.toMap(PartComparison::node, Function.identity()));
        for (int v : order) {
            if (parts.containsKey(v)) {
                grid.row(cells(parts.get(v), carcass));
            }
        }
        line(grid.text());
    }

    private String[] cells(PartComparison part, double carcass) {
        return new String[] {
            address(part.node()),
            Written.kilograms(part.weighed().mean()),
            part.isStated() ? Written.kilograms(part.expected().mean()) : "-",
            Written.more(part.difference()),
            Written.deviations(part.z()),
            Written.percent(part.weighed().mean() / carcass),
            part.isStated() ? Written.percent(part.expected().mean() / carcass) : "-"
        };
    }

    private void inAgainstOut() {
        List<CutBalance> balances = report.test().reconciled().balances();
        if (balances.isEmpty()) {
            return;
        }
        Grid grid = new Grid().row("In against out, in kg", "in", "out", "difference", "z");
        for (CutBalance balance : balances) {
            double in = report.test().reconciled().readings().weight(balance.cut());
            grid.row(
                    address(balance.cut()),
                    Written.kilograms(in),
                    Written.kilograms(in + balance.excess().mean()),
                    Written.more(balance.excess().mean()),
                    Written.deviations(balance.z()));
        }
        line(grid.text());
    }

    private void verdict() {
        line(VerdictText.of(report.test(), report.faults().verdict()));
        FaultText.amiss(report.test(), report.faults()).forEach(this::line);
        List<String> offered = FaultText.offered(report.test(), report.faults());
        offered.forEach(this::line);
        if (!offered.isEmpty()) {
            line(FaultText.MERELY_OFFERED);
        }
        line("");
    }

    private void balanced() {
        Grid grid = new Grid().row("In balance, in kg", "weight", "1 sd", "% of cut", "");
        for (int v : order) {
            if (report.test().reconciled().weight(v) instanceof Reconciled.Weight known) {
                grid.row(
                        address(v),
                        Written.kilograms(known.estimate().mean()),
                        Written.deviation(known.estimate().spread().variance()),
                        share(v),
                        report.test().reading(v).isPresent() ? "" : "not weighed");
            }
        }
        out.append(grid.text());
        together();
        if (report.faults().verdict() == Verdict.DOES_NOT_BALANCE) {
            line("What is wrong is spread over all of these: use them once it is found and put right.");
        }
        line("");
    }

    private String share(int node) {
        return node == 0
                ? ""
                : report.test()
                        .share(node)
                        .map(share -> Written.percent(share.ofMeans()))
                        .orElse("-");
    }

    /** What is known of parts together; of cuts of which no part was weighed that is merely the cut. */
    private void together() {
        List<Integer> whole = new ArrayList<>();
        for (int cut : order) {
            List<Reconciled.OnlyTogether> open = IntStream.range(plan.firstPart(cut), plan.firstPart(cut + 1))
                    .mapToObj(report.test().reconciled()::weight)
                    .filter(Reconciled.OnlyTogether.class::isInstance)
                    .map(Reconciled.OnlyTogether.class::cast)
                    .limit(1)
                    .toList();
            boolean isApart = IntStream.range(plan.firstPart(cut), plan.firstPart(cut + 1))
                    .anyMatch(part -> report.test().reading(part).isPresent());
            if (!open.isEmpty() && !isApart) {
                whole.add(cut);
            } else if (!open.isEmpty()) {
                line("Of " + address(cut) + " only together: "
                        + PartNames.all(plan, open.get(0).parts()) + "; "
                        + Written.kilograms(open.get(0).sum().mean()) + " kg.");
            }
        }
        if (!whole.isEmpty()) {
            line("Weighed whole, their parts not: " + PartNames.all(plan, whole) + ".");
        }
    }

    private void whereItWent() {
        Grid grid = new Grid().row("Where it went, in kg", "weight", "expected", "difference");
        for (Share share : report.whereItWent().shares()) {
            grid.row(
                    share.sort().words(),
                    Written.kilograms(share.kilograms()),
                    share.isStated() ? Written.kilograms(share.expected()) : "-",
                    Written.more(share.difference()));
        }
        line(grid.text());
    }
}
