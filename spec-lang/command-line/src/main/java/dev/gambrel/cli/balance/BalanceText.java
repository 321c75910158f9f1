package dev.gambrel.cli.balance;

import dev.gambrel.batches.sheets.SheetHeading;
import dev.gambrel.cli.balance.report.SheetReport;
import dev.gambrel.diagnostic.Visible;
import dev.gambrel.yields.cuttingtest.PartComparison;
import dev.gambrel.yields.cuttingtest.WhereItWent;
import dev.gambrel.yields.cuttingtest.WhereItWent.Share;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.plan.YieldPlan;
import dev.gambrel.yields.reconciliation.CutBalance;
import dev.gambrel.yields.reconciliation.GlobalTest;
import dev.gambrel.yields.reconciliation.Reconciled;
import java.util.ArrayList;
import java.util.List;

/** A sheet as it is read: what was weighed, whether it adds up, what may be wrong, the weights in balance, where it went. */
final class BalanceText {
    private final SheetReport report;
    private final YieldPlan plan;
    private final FaultText faults;
    private final StringBuilder out = new StringBuilder();

    private BalanceText(SheetReport report) {
        this.report = report;
        this.plan = report.test().plan();
        this.faults = new FaultText(report);
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
        return FaultText.address(plan, node);
    }

    private void weighed() {
        double carcass = report.sheet().heading().carcass().mass().value();
        Grid grid = new Grid()
                .row("Weighed, in kg", "weighed", "expected", "difference", "z", "% of carcass", "expected %");
        for (PartComparison part : report.weighed()) {
            grid.row(
                    address(part.node()),
                    Written.kilograms(part.weighed().mean()),
                    part.isStated() ? Written.kilograms(part.expected().mean()) : "-",
                    Written.more(part.difference()),
                    Written.deviations(part.z()),
                    Written.percent(part.weighed().mean() / carcass),
                    part.isStated() ? Written.percent(part.expected().mean() / carcass) : "-");
        }
        line(grid.text());
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
        GlobalTest test = report.test().reconciled().test();
        String evidence = "chi-square " + Written.decimals(test.chiSquare(), 1) + " with " + test.degreesOfFreedom()
                + (test.degreesOfFreedom() == 1 ? " check" : " checks") + "; without a mistake a sheet fits no better in "
                + Written.chance(test.probability()) + ".";
        switch (report.verdict()) {
            case BALANCES -> line("The sheet balances: " + evidence);
            case DOES_NOT_BALANCE -> line("The sheet does not balance: " + evidence);
            case NOT_CHECKED ->
                line("Nothing checks this sheet: of no cut are its own weight and that of all its parts known.");
        }
        faults.lines().forEach(this::line);
        line("");
    }

    private void balanced() {
        Grid grid = new Grid().row("In balance, in kg", "weight", "1 sd", "% of cut", "");
        for (int v = 0; v < plan.size(); v++) {
            if (report.test().reconciled().weight(v) instanceof Reconciled.Weight known) {
                boolean isRead = report.test().reading(v).isPresent();
                grid.row(
                        address(v),
                        Written.kilograms(known.estimate().mean()),
                        Written.deviation(known.estimate().spread().variance()),
                        v == 0
                                ? ""
                                : report.test()
                                        .share(v)
                                        .map(share -> Written.percent(share.ofMeans()))
                                        .orElse("-"),
                        isRead ? "" : "not weighed");
            }
        }
        line(grid.text().stripTrailing());
        together();
        line("");
    }

    private void together() {
        int last = -1;
        for (int v = 0; v < plan.size(); v++) {
            boolean isFirst = report.test().reconciled().weight(v) instanceof Reconciled.OnlyTogether open
                    && open.cut() != last;
            if (isFirst && report.test().reconciled().weight(v) instanceof Reconciled.OnlyTogether open) {
                last = open.cut();
                Estimate sum = open.sum();
                line("Of " + address(open.cut()) + " only together: " + FaultText.names(plan, open.parts()) + ", "
                        + Written.kilograms(sum.mean()) + " kg.");
            }
        }
    }

    private void whereItWent() {
        Grid grid = new Grid().row("Where it went, in kg", "weight", "expected", "difference");
        for (Share share : report.whereItWent().shares()) {
            grid.row(
                    words(share.sort()),
                    Written.kilograms(share.kilograms()),
                    share.isStated() ? Written.kilograms(share.expected()) : "-",
                    Written.more(share.difference()));
        }
        line(grid.text());
    }

    private static String words(WhereItWent.Sort sort) {
        return switch (sort) {
            case MEAT -> "meat";
            case BONE -> "bone";
            case TRIM -> "trim";
            case LOSS -> "loss";
            case NOT_WEIGHED -> "parts known only together";
        };
    }
}
