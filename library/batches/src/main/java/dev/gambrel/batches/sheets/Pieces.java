package dev.gambrel.batches.sheets;

import dev.gambrel.batches.sheets.SheetRow.Cell;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.yields.plan.Node;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.regex.Pattern;

/** How much of a part was on the scale, by the word in its column. */
final class Pieces {
    private static final Pattern NUMBER = Pattern.compile("[1-9][0-9]?");
    private static final int SIDES = 2;

    private Pieces() {}

    /** What a weight is to be multiplied by to be that of all pieces of the carcass; nothing, and why, if that is not said. */
    static Optional<Double> factor(Cell cell, Node part, Consumer<Diagnostic> findings) {
        String word = cell.written().toLowerCase(Locale.ROOT);
        double all = part.pieces().expected();
        return switch (word) {
            case "all" -> Optional.of(1.0);
            case "pair" -> number(cell, 2, part, findings);
            case "single" -> number(cell, 1, part, findings);
            case "side" -> Optional.of(scaled(cell, part, "one side", SIDES, findings));
            default ->
                NUMBER.matcher(word).matches() && all > 0
                        ? number(cell, Integer.parseInt(word), part, findings)
                        : unknown(cell, findings);
        };
    }

    private static Optional<Double> unknown(Cell cell, Consumer<Diagnostic> findings) {
        findings.accept(Diagnostic.of(SheetCode.PIECES_UNKNOWN, cell.place())
                .with("pieces", cell.written())
                .help(
                        "Write what lay on the scale: pair, single, side (all that one side of the carcass gives), all, or"
                                + " how many pieces."));
        return Optional.empty();
    }

    private static Optional<Double> number(Cell cell, int pieces, Node part, Consumer<Diagnostic> findings) {
        if (pieces > part.pieces().whole()) {
            findings.accept(Diagnostic.of(SheetCode.NOT_SO_MANY, cell.place())
                    .with("part", PlanParts.called(part))
                    .with("found", pieces)
                    .with("most", part.pieces().whole())
                    .help("Write how many pieces of one carcass lay on the scale."));
            return Optional.empty();
        }
        double factor = part.pieces().expected() / pieces;
        return Optional.of(
                factor == 1
                        ? factor
                        : scaled(cell, part, pieces + " of " + part.pieces().whole() + " pieces", factor, findings));
    }

    private static double scaled(Cell cell, Node part, String weighed, double factor, Consumer<Diagnostic> findings) {
        findings.accept(Diagnostic.of(SheetCode.SCALED_UP, cell.place())
                .with("part", PlanParts.called(part))
                .with("weighed", weighed)
                .with("factor", factor == Math.rint(factor) ? Long.toString((long) factor) : Double.toString(factor))
                .help("Left and right differ, and this sheet does not show by how much; weigh both where you can."));
        return factor;
    }
}
