package dev.gambrel.yields.table;

import dev.gambrel.quantity.Quantity;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Portion;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.tree.portion.MuscleArea;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.portions.PortionYield;
import dev.gambrel.yields.portions.Sliced;
import dev.gambrel.yields.portions.Weighed;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.OptionalDouble;

/** The lines of what one portion weighs, of those of which more is known than the target. */
final class EachPortionLines {
    /** One portion in forty. */
    private static final double FEW_TOO_LIGHT = 0.025;

    private EachPortionLines() {}

    static void print(List<PortionYield> portions, List<Part> parts, Figures figures, StringBuilder out) {
        List<PortionYield> told =
                portions.stream().filter(EachPortionLines::tellsMore).toList();
        if (!told.isEmpty()) {
            grid(told, figures, out);
            notes(told, out);
        }
        if (leavesPortionsOut(parts)) {
            out.append("Of several portions written of one cut only the first is worked out.\n");
        }
    }

    private static boolean tellsMore(PortionYield portion) {
        return !(portion instanceof Weighed)
                || portion.givenAway().isPresent()
                || area(portion).isPresent()
                || !FinishWords.of(portion.from().portion()).isEmpty();
    }

    private static void grid(List<PortionYield> portions, Figures figures, StringBuilder out) {
        String unit = figures.unit().symbol();
        TextGrid grid = new TextGrid();
        grid.add("", "", "", "weight", "share", "given", "muscle,", unit + " a piece", "");
        grid.add(
                "each portion",
                unit,
                "± " + unit,
                "accepted",
                "accepted",
                "away",
                "cm²",
                "lost to kerf",
                "done with it");
        for (PortionYield portion : portions) {
            Optional<Estimate> each = portion.each();
            Limit accepted = portion.from().portion().acceptance().weight();
            grid.add(
                    PortionLines.name(portion),
                    each.map(weight -> figures.finer(weight.mean())).orElse(Line.NOT_STATED),
                    each.map(weight -> figures.spreading(weight).sd()).orElse(Line.NOT_STATED),
                    accepted.toString(),
                    percent(portion.shareAccepted()),
                    givenAway(portion),
                    muscle(portion),
                    kerf(portion.lostToKerf(), figures),
                    FinishWords.of(portion.from().portion()));
        }
        grid.print(out.append('\n'));
    }

    private static void notes(List<PortionYield> portions, StringBuilder out) {
        if (portions.stream().anyMatch(p -> p.givenAway().isPresent())) {
            out.append("Given away is what portions weigh over the target, those under it counted as nothing.\n");
        }
        portions.forEach(portion -> tooLight(portion, out));
        if (portions.stream().anyMatch(p -> area(p).isPresent())) {
            out.append(
                            "Weight and thickness are both kept only where the muscle's cut face is as large as is shown, at 1.05 g\n")
                    .append("to a cubic centimetre (common practice).\n");
        }
        if (portions.stream().anyMatch(p -> p instanceof Sliced)) {
            out.append(
                            "Slices are counted along the length stated: n of them need n thicknesses and n - 1 kerfs. The piece is\n")
                    .append("taken as equally thick all along.\n");
        }
        if (portions.stream().anyMatch(p -> !(p.from().portion().endPieces() instanceof Portion.EndPieces.NotStated))) {
            out.append("What is left of a piece has its end pieces in it.\n");
        }
        if (portions.stream().anyMatch(p -> !p.from().portion().finish().tares().isEmpty())) {
            out.append("Tare is not meat and is in no weight here.\n");
        }
    }

    /** What is needed, and what there is where the length of the piece tells. */
    private static String muscle(PortionYield portion) {
        OptionalDouble there = portion.muscle();
        return area(portion).map(EachPortionLines::area).orElse("")
                + (area(portion).isPresent() && there.isPresent() ? ", is " + centimetres(there.getAsDouble()) : "");
    }

    private static Optional<MuscleArea> area(PortionYield portion) {
        return MuscleArea.aimedAt(
                portion.from().portion().aim(), portion.from().portion().acceptance());
    }

    private static String area(MuscleArea area) {
        if (area.least() == area.most()) {
            return centimetres(area.least());
        } else if (area.least() == 0) {
            return "at most " + centimetres(area.most());
        }
        return Double.isInfinite(area.most())
                ? "at least " + centimetres(area.least())
                : centimetres(area.least()) + " to " + centimetres(area.most());
    }

    private static String centimetres(double area) {
        return String.format(Locale.ROOT, "%.1f", area);
    }

    private static String percent(OptionalDouble share) {
        return share.isPresent() ? PortionLines.percent(share.getAsDouble()) : "";
    }

    /** What to aim at where too many would be refused. */
    private static void tooLight(PortionYield portion, StringBuilder out) {
        OptionalDouble aim = portion.aimFor(FEW_TOO_LIGHT);
        if (aim.isPresent() && portion.shareTooLight().orElse(0) > FEW_TOO_LIGHT) {
            Limit accepted = portion.from().portion().acceptance().weight();
            Quantity least = accepted.least().orElseThrow();
            double inUnit = aim.getAsDouble() / least.unit().factor().doubleValue();
            out.append("Of ")
                    .append(PortionLines.name(portion))
                    .append(", ")
                    .append(percent(portion.shareTooLight()))
                    .append(" are under ")
                    .append(least)
                    .append("; aimed at ")
                    .append(String.format(Locale.ROOT, "%.1f ", inUnit))
                    .append(least.unit().symbol())
                    .append(", 2.5 % would be.\n");
        }
    }

    private static String givenAway(PortionYield portion) {
        return portion.givenAway().isPresent()
                ? String.format(
                        Locale.ROOT,
                        "%.1f %%",
                        100
                                * portion.givenAway().getAsDouble()
                                / portion.each().orElseThrow().mean())
                : "";
    }

    private static String kerf(OptionalDouble lost, Figures figures) {
        return lost.isPresent() ? figures.finer(lost.getAsDouble()) : "";
    }

    private static boolean leavesPortionsOut(List<Part> parts) {
        return parts.stream()
                .anyMatch(part ->
                        part instanceof Cut cut && (cut.portions().size() > 1 || leavesPortionsOut(cut.parts())));
    }
}
