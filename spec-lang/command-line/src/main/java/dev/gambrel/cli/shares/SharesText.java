package dev.gambrel.cli.shares;

import dev.gambrel.batches.sheets.WeighSheet;
import dev.gambrel.cli.shares.report.SharesReport;
import dev.gambrel.cli.terminal.Grid;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.diagnostic.Visible;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.figure.Interval;
import dev.gambrel.yields.figure.Spread;
import dev.gambrel.yields.testedcuts.FoundShare;
import dev.gambrel.yields.testedcuts.FoundShares;
import dev.gambrel.yields.testedcuts.LeftOut;
import dev.gambrel.yields.testedcuts.Prior;
import dev.gambrel.yields.testedcuts.TestedCut;
import dev.gambrel.yields.testedcuts.TestedPart;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;

/** The house's shares as they are read: a table for each cut, and every term in a line below. */
final class SharesText {
    private static final int PLACES = 2;
    private static final String NOTHING = "-";
    private static final String NOTES = """
            stated: what the specification says. found: what the sheets give. All are in per cent of the weight that enters the cut.
            ± carcasses: one standard deviation between carcasses; two of three lie within it. Over many carcasses it averages out.
            ± mean: how far the found figure itself may be off, one standard deviation. More tests lessen it; more carcasses do not.
            mean 95 %: where the house's true figure lies, 19 times in 20. next 95 %: where the next carcass lies, 19 times in 20.
            differs: the stated figure lies outside the range of the mean. Of 20 figures that are right one looks different by chance.
            Whether shares changed during these tests is told by gambrel drift: a mean of before and after is true of neither.
            scale: the error of the scale explains all that was seen, so how far carcasses stray is not told.
            not weighed: nobody weighed this loss. It keeps what is stated, and the other parts share what it leaves as they were weighed:
            what is missing between a cut and its parts is no weighing of the loss, since the errors of all weighings gather in it.
            """;

    private final SharesReport report;
    private final StringBuilder out = new StringBuilder();

    private SharesText(SharesReport report) {
        this.report = report;
    }

    static String of(SharesReport report) {
        SharesText text = new SharesText(report);
        text.heading();
        report.found().forEach(text::cut);
        text.notFound();
        text.line(NOTES.stripTrailing());
        text.line("");
        return text.out.toString();
    }

    private void line(String line) {
        out.append(line).append('\n');
    }

    private void heading() {
        int number = report.sheets().size();
        line(Visible.text((number == 1 ? "1 sheet: " : number + " sheets: ")
                + report.sheets().stream().map(WeighSheet::name).collect(Collectors.joining(", "))));
        line("Found figures are the " + report.mean().words() + ".");
        if (report.prior() instanceof Prior.Stated stated) {
            line("What is stated counts as much as " + plain(stated.worth().tests()) + " tests, in every part alike.");
        }
        line("");
    }

    private static String plain(double number) {
        return BigDecimal.valueOf(number).stripTrailingZeros().toPlainString();
    }

    private void cut(FoundShares shares) {
        line(Visible.text(name(shares.cut().path()) + ", " + tests(shares.number()) + drawn(shares)));
        Grid rows = Grid.withRemarks()
                .row("", "stated %", "found %", "± carcasses", "± mean", "mean 95 %", "next 95 %", "");
        shares.shares().forEach(share -> rows.row(cells(share, shares.moved().contains(share))));
        shares.cut().kept().forEach(loss -> rows.row(kept(loss)));
        out.append(rows.text());
        if (shares.shares().get(0).straying() instanceof FoundShare.NotTold) {
            line(
                    "One test tells neither how far carcasses stray nor how far its figures may be off; that is not none.");
        }
        shares.cut()
                .meanMissing()
                .ifPresent(missing ->
                        line("Missing between the cut and its parts, as a mean of the tests: " + percent(missing)
                                + " %; stated are " + percent(1 - shares.cut().leftByKept()) + " %."));
        leftOut(shares.cut().leftOut());
        line("");
    }

    private static String tests(int number) {
        return number == 1 ? "1 test" : number + " tests";
    }

    private String drawn(FoundShares shares) {
        if (report.prior() instanceof Prior.None) {
            return "";
        }
        return shares.ownWeight() < 1
                ? ": the tests count " + percent(shares.ownWeight()) + " %, what is stated the rest"
                : ": what is stated counts nothing here, since it does not state every part";
    }

    static String name(TreePath cut) {
        return cut.equals(TreePath.ROOT) ? "carcass" : cut.toString();
    }

    private static String[] cells(FoundShare share, boolean isMoved) {
        String[] cells = {
            Visible.text(share.part().name()), stated(share.part()), percent(share.share()), "", "", "", "", ""
        };
        if (share.straying() instanceof FoundShare.Told told) {
            cells[3] = told.isDrowned() ? NOTHING : percent(told.betweenCarcasses());
            cells[4] = percent(told.ofMean());
            cells[5] = range(told.mean95());
            cells[6] = range(told.next95());
            cells[7] = remarks(told, isMoved);
        } else {
            for (int i = 3; i < 7; i++) {
                cells[i] = NOTHING;
            }
        }
        return cells;
    }

    private static String remarks(FoundShare.Told told, boolean isMoved) {
        List<String> remarks = new ArrayList<>();
        if (isMoved) {
            remarks.add("differs");
        }
        if (told.isDrowned()) {
            remarks.add("scale");
        }
        return String.join(", ", remarks);
    }

    private static String[] kept(TestedPart loss) {
        return new String[] {
            Visible.text(loss.name()), stated(loss), percent(loss.stated().mean()), "", "", "", "", "not weighed"
        };
    }

    private static String stated(TestedPart part) {
        Estimate stated = part.stated();
        if (!part.isStated()) {
            return NOTHING;
        }
        return percent(stated.mean())
                + (stated.spread() instanceof Spread.Stated spread ? " ±" + percent(spread.standardDeviation()) : "");
    }

    private static String percent(double share) {
        BigDecimal rounded = new BigDecimal(100 * share).setScale(PLACES, RoundingMode.HALF_EVEN);
        return rounded.signum() == 0 ? rounded.abs().toPlainString() : rounded.toPlainString();
    }

    private static String range(Interval range) {
        return percent(range.low()) + " to " + percent(range.high());
    }

    private void notFound() {
        List<TestedCut.NotFound> closed = report.notFound().stream()
                .filter(cut -> cut.leftOut().stream()
                        .allMatch(each -> each instanceof LeftOut.PartsNotKnown parts && parts.isAll()))
                .toList();
        if (!closed.isEmpty()) {
            line(Visible.text("Nothing was weighed of the parts of: "
                    + closed.stream().map(cut -> name(cut.path())).collect(Collectors.joining("; ")) + "."));
        }
        for (TestedCut.NotFound cut : report.notFound()) {
            if (!closed.contains(cut)) {
                line(Visible.text("No shares can be told of " + name(cut.path()) + "."));
                leftOut(cut.leftOut());
            }
        }
        if (!report.notFound().isEmpty()) {
            line("");
        }
    }

    /** Tests that are left out for the same reason in one line. */
    private void leftOut(List<LeftOut> leftOut) {
        Map<String, List<String>> byReason = new LinkedHashMap<>();
        leftOut.forEach(each ->
                byReason.computeIfAbsent(reason(each), any -> new ArrayList<>()).add(each.test()));
        byReason.forEach((reason, tests) -> line(Visible.text("  " + String.join(", ", tests) + ": " + reason)));
    }

    private static String reason(LeftOut leftOut) {
        if (leftOut instanceof LeftOut.PartsNotKnown parts) {
            return parts.isAll()
                    ? "nothing was weighed of its parts"
                    : "not weighed, and not to be told from the others: " + String.join(", ", parts.parts());
        } else if (leftOut instanceof LeftOut.Nothing nothing) {
            return nothing.part() + " comes to "
                    + new BigDecimal(nothing.kilograms())
                            .setScale(3, RoundingMode.HALF_EVEN)
                            .toPlainString()
                    + " kg: the cut was worked in another way, or the part is too light for the scale";
        }
        return "the cut was worked to other parts";
    }
}
