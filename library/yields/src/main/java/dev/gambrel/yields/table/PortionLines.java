package dev.gambrel.yields.table;

import dev.gambrel.tree.Portion;
import dev.gambrel.yields.PortionYield;
import dev.gambrel.yields.Portioning;
import java.util.List;
import java.util.Locale;

/** The lines of the portions. */
final class PortionLines {
    private PortionLines() {}

    static void print(List<PortionYield> portions, Figures figures, StringBuilder out) {
        String unit = figures.unit().symbol();
        TextGrid grid = new TextGrid();
        grid.add("", unit + ", one", "portions from", "from all", "", "left of one", "");
        grid.add("portion", "piece", "one piece", "pieces", "chance of at least", "piece, " + unit, "remainder to");
        for (PortionYield portion : portions) {
            Portioning one = portion.onePiece();
            grid.add(
                    name(portion.portion()) + ", " + portion.cut(),
                    figures.shown(one.piece().mean()),
                    number(one.expectedNumber()),
                    number(portion.expectedNumberFromAll()),
                    chances(one),
                    figures.shown(one.expectedRemainder()),
                    PartLines.goesTo(portion.portion().remainder()));
        }
        grid.print(out);
        out.append("What portioning leaves over is counted above with the cut that it is cut from.\n");
        if (portions.stream().anyMatch(p -> p.onePiece().isFromMeanAlone())) {
            out.append("Where a cut's spread is not stated, the number is that of a piece of mean weight.\n");
        }
    }

    private static String name(Portion portion) {
        return portion.name() + " " + portion.target();
    }

    private static String number(double number) {
        return String.format(Locale.ROOT, "%.1f", number);
    }

    /** Of the number to be promised at 95 % and of the next. */
    private static String chances(Portioning one) {
        if (one.isFromMeanAlone()) {
            return Line.NOT_STATED;
        }
        long sure = one.promised(0.95).orElseThrow();
        return sure > 0 ? chance(one, sure) + ", " + chance(one, sure + 1) : chance(one, 1);
    }

    /** In whole per cent, and never as certain as it is not. */
    private static String chance(Portioning one, long number) {
        double chance = one.chanceOfAtLeast(number).orElseThrow();
        String percent =
                chance < 1 && chance > 0.99 ? "over 99" : chance > 0 && chance < 0.01 ? "under 1" : whole(chance);
        return number + ": " + percent + " %";
    }

    private static String whole(double chance) {
        return String.format(Locale.ROOT, "%.0f", 100 * chance);
    }
}
