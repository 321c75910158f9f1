package dev.gambrel.yields.table;

import dev.gambrel.quantity.Expected;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.portion.Aim;
import dev.gambrel.tree.portion.Fewest;
import dev.gambrel.yields.portions.Divided;
import dev.gambrel.yields.portions.PortionYield;
import dev.gambrel.yields.portions.Portioning;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** The lines of the portions. */
final class PortionLines {
    private PortionLines() {}

    static void print(List<PortionYield> portions, Figures figures, StringBuilder out) {
        String unit = figures.unit().symbol();
        TextGrid grid = new TextGrid();
        grid.add("", unit + ", one", "portions from", "from all", "", "left of one", "");
        grid.add("portion", "piece", "one piece", "pieces", "chance of at least", "piece, " + unit, "remainder to");
        for (PortionYield portion : portions) {
            grid.add(
                    name(portion),
                    figures.shown(portion.from().weight().mean()),
                    number(portion, portion.expectedNumber()),
                    number(portion, portion.expectedNumberFromAll()),
                    chances(portion),
                    weight(portion.expectedRemainder(), figures),
                    remainderTo(portion));
        }
        grid.print(out);
        out.append("What portioning leaves over is counted above with the cut that it is cut from.\n");
        if (portions.stream().flatMap(p -> p.counted().stream()).anyMatch(Portioning::isFromMeanAlone)) {
            out.append("Where a cut's spread is not stated, the number is that of a piece of mean weight.\n");
        }
    }

    static String name(PortionYield portion) {
        return size(portion.from().portion()) + ", " + portion.from().cut();
    }

    private static String size(Portion portion) {
        String name = portion.name().text();
        Optional<Expected> weight = portion.aim().targetWeight();
        Optional<Expected> thickness = portion.aim().targetThickness();
        if (weight.isPresent() && thickness.isPresent()) {
            return name + " " + weight.get() + ", " + thickness.get() + " thick";
        } else if (portion.aim() instanceof Aim.Number into) {
            return name + (into.number() == 1 ? " whole" : " into " + into.number());
        }
        return name + " " + weight.map(Expected::toString).orElseGet(() -> thickness.orElseThrow() + " thick");
    }

    /** What is divided into a number leaves nothing. */
    static String remainderTo(PortionYield portion) {
        Home home = portion.from().portion().remainder();
        return portion instanceof Divided && home instanceof Home.NotStated ? "" : PartLines.goesTo(home);
    }

    static String weight(OptionalDouble kilograms, Figures figures) {
        return kilograms.isPresent() ? figures.shown(kilograms.getAsDouble()) : Line.NOT_STATED;
    }

    private static String number(PortionYield portion, OptionalDouble number) {
        return number.isPresent()
                ? String.format(Locale.ROOT, portion instanceof Divided ? "%.0f" : "%.1f", number.getAsDouble())
                : Line.NOT_STATED;
    }

    private static String chances(PortionYield portion) {
        if (portion instanceof Divided) {
            return "";
        }
        return portion.counted()
                .filter(count -> !count.isFromMeanAlone())
                .map(count -> chances(portion, count))
                .orElse(Line.NOT_STATED);
    }

    /** Of the number that there must be; or of that to be promised at 95 % and of the next. */
    private static String chances(PortionYield portion, Portioning one) {
        if (portion.from().portion().acceptance().fewest() instanceof Fewest.From fewest) {
            return chance(one, fewest.fromOnePiece(portion.from().ofCarcass()));
        }
        long sure = one.promised(0.95).orElseThrow();
        return sure > 0 ? chance(one, sure) + ", " + chance(one, sure + 1) : chance(one, 1);
    }

    private static String chance(Portioning one, long number) {
        return number + ": " + percent(one.chanceOfAtLeast(number).orElseThrow());
    }

    /** In whole per cent, and never as certain as it is not. */
    static String percent(double chance) {
        String percent = chance < 1 && chance > 0.99
                ? "over 99"
                : chance > 0 && chance < 0.01 ? "under 1" : String.format(Locale.ROOT, "%.0f", 100 * chance);
        return percent + " %";
    }
}
