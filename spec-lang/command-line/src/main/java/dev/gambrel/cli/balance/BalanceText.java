package dev.gambrel.cli.balance;

import dev.gambrel.batches.sheets.PriceList;
import dev.gambrel.batches.sheets.SheetHeading;
import dev.gambrel.batches.sheets.SheetReport;
import dev.gambrel.cli.terminal.Grid;
import dev.gambrel.diagnostic.Visible;
import dev.gambrel.yields.cuttingtest.PartComparison;
import dev.gambrel.yields.cuttingtest.RoundedBalance;
import dev.gambrel.yields.cuttingtest.Shortfall;
import dev.gambrel.yields.cuttingtest.Verdict;
import dev.gambrel.yields.cuttingtest.WhereItWent;
import dev.gambrel.yields.cuttingtest.WhereItWent.Rounded;
import dev.gambrel.yields.cuttingtest.wording.FaultText;
import dev.gambrel.yields.cuttingtest.wording.PartNames;
import dev.gambrel.yields.cuttingtest.wording.VerdictText;
import dev.gambrel.yields.cuttingtest.wording.Written;
import dev.gambrel.yields.plan.YieldPlan;
import dev.gambrel.yields.reconciliation.CutBalance;
import dev.gambrel.yields.reconciliation.Reconciled;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.Map;
import java.util.function.Function;
import java.util.stream.Collectors;
import java.util.stream.IntStream;

/** A sheet as it is read: what was weighed, whether it adds up, what may be wrong, the weights in balance, where it went. */
final class BalanceText {
    private final SheetReport report;
    private final YieldPlan plan;
    private final RoundedBalance rounded;
    private final List<Integer> order;
    private final StringBuilder out = new StringBuilder();

    private BalanceText(SheetReport report) {
        this.report = report;
        this.plan = report.test().plan();
        this.rounded = RoundedBalance.of(report.test(), Written.GRAMS);
        this.order = fromTop();
    }

    static String of(SheetReport report, PriceList prices) {
        BalanceText text = new BalanceText(report);
        text.heading();
        text.weighed();
        text.inAgainstOut();
        text.verdict();
        text.balanced();
        text.whereItWent();
        text.shortfall();
        text.out.append(WorthText.of(report, text.rounded, prices));
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
        FaultText.besides(report.test(), report.weighed(), SheetReport.LEVEL).forEach(this::line);
        FaultText.amiss(report.test(), report.faults()).stream()
                .map(Visible::text)
                .forEach(this::line);
        List<String> offered = FaultText.offered(report.test(), report.faults());
        offered.stream().map(Visible::text).forEach(this::line);
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
                        rounded.weight(v).toPlainString(),
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
                        + rounded.together(cut).toPlainString() + " kg.");
            }
        }
        if (!whole.isEmpty()) {
            line("Weighed whole, their parts not: " + PartNames.all(plan, whole) + ".");
        }
    }

    private void whereItWent() {
        Grid grid = new Grid().row("Where it went, in kg", "weight", "expected", "difference");
        for (Rounded share : report.whereItWent().rounded(Written.GRAMS)) {
            grid.row(
                    share.sort().words(),
                    share.kilograms().toPlainString(),
                    share.isStated() ? share.expected().toPlainString() : Written.NOTHING,
                    share.difference().map(Written::signed).orElse(Written.NOTHING));
        }
        line(grid.text());
    }

    /** Where the meat that is missing lies instead; said only of a sheet that is not in doubt. */
    private void shortfall() {
        boolean isSaid = report.faults().verdict() != Verdict.DOES_NOT_BALANCE
                && Shortfall.of(report.test(), SheetReport.LEVEL).isPresent()
                && report.whereItWent().shares().stream().allMatch(WhereItWent.Share::isStated);
        if (isSaid) {
            List<Rounded> others = report.whereItWent().rounded(Written.GRAMS).stream()
                    .filter(share -> share.sort() != WhereItWent.Sort.MEAT)
                    .sorted(Comparator.comparing(BalanceText::more).reversed())
                    .toList();
            line("Meat is " + others.stream().map(BalanceText::more).reduce(BigDecimal.ZERO, BigDecimal::add)
                    + " kg less than was expected; in its place there is "
                    + others.stream()
                            .filter(share -> more(share).signum() != 0)
                            .map(share ->
                                    more(share).abs() + " kg " + (more(share).signum() > 0 ? "more " : "less ")
                                            + share.sort().words())
                            .collect(Collectors.joining(", "))
                    + ".");
            line("");
        }
    }

    private static BigDecimal more(Rounded share) {
        return share.difference().orElse(BigDecimal.ZERO);
    }
}
