package dev.gambrel.yields.table;

import dev.gambrel.yields.working.WayUsed;
import java.math.BigDecimal;
import java.math.RoundingMode;
import java.util.List;

/** The lines that say how each cut is worked, and why. */
final class WayLines {
    private static final int PERCENT_DECIMALS = 1;

    private WayLines() {}

    static void print(List<WayUsed> ways, StringBuilder out) {
        TextGrid grid = new TextGrid();
        grid.add("worked as", "% of pieces", "% of weight", "because");
        for (WayUsed way : ways) {
            grid.add(
                    way.path().toString(),
                    percent(way.split().pieces()),
                    percent(way.split().weight()),
                    way.because());
        }
        grid.print(out);
    }

    private static String percent(double part) {
        return new BigDecimal(100 * part)
                .setScale(PERCENT_DECIMALS, RoundingMode.HALF_EVEN)
                .toPlainString();
    }
}
