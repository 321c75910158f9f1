package dev.gambrel.yields.table;

import dev.gambrel.tree.choice.Choice;
import dev.gambrel.tree.choice.Condition;
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
        if (ways.stream().anyMatch(WayLines::isWeighed)) {
            out.append(
                            "Where the weight of a piece decides, these are the pieces and the weight that are expected to go each")
                    .append(" way;\nspreads further down take that as settled.\n");
        }
    }

    private static boolean isWeighed(WayUsed way) {
        return !way.ordered()
                && way.way().choice() instanceof Choice.When when
                && when.condition() instanceof Condition.PieceWeighs;
    }

    private static String percent(double part) {
        return new BigDecimal(100 * part)
                .setScale(PERCENT_DECIMALS, RoundingMode.HALF_EVEN)
                .toPlainString();
    }
}
