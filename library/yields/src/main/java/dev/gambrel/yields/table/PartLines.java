package dev.gambrel.yields.table;

import dev.gambrel.tree.Home;
import dev.gambrel.yields.ExpectedYields;
import dev.gambrel.yields.YieldRow;
import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.plan.Kind;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;

/** The lines of the parts: each cut's parts are apportioned to the cut's own printed figures, from the top down. */
final class PartLines {
    private static final long WHOLE = Math.round(Figures.percentSteps(100));

    private final Figures figures;
    private final List<Line> lines = new ArrayList<>();

    /** What is printed of one row, in steps of the last place; 0 where the row has no such figure. */
    private record Printed(long all, long one, long ofCutAbove, long ofCarcass) {}

    private PartLines(Figures figures) {
        this.figures = figures;
    }

    static List<Line> of(ExpectedYields yields, Figures figures) {
        PartLines parts = new PartLines(figures);
        YieldRow root = yields.weighed();
        long all = Math.round(parts.allSteps(root));
        parts.add(root, new Printed(all, all, 0, WHOLE));
        return parts.lines;
    }

    private void add(YieldRow row, Printed printed) {
        lines.add(line(row, printed));
        List<YieldRow> parts = row.parts();
        if (parts.isEmpty()) {
            return;
        }
        long[] all = apportion(parts, this::allSteps, printed.all());
        long[] one = onePiece(row, parts, printed.one(), all);
        long[] ofCut = apportion(parts, part -> percentSteps(part.percentOfCutAbove()), WHOLE);
        long carcass = row.percentOfCarcass().isPresent() ? printed.ofCarcass() : carcassBelow(parts);
        long[] ofCarcass = apportion(parts, part -> percentSteps(part.percentOfCarcass()), carcass);
        for (int i = 0; i < all.length; i++) {
            add(parts.get(i), new Printed(all[i], one[i], ofCut[i], ofCarcass[i]));
        }
    }

    private static long carcassBelow(List<YieldRow> parts) {
        return parts.stream().anyMatch(part -> part.percentOfCarcass().isPresent()) ? WHOLE : 0;
    }

    /**
     * Pieces add up to a piece of the cut above only where there are as many of one as of the other. Where there is one,
     * it is all there are.
     */
    private long[] onePiece(YieldRow row, List<YieldRow> parts, long total, long[] all) {
        if (parts.stream().allMatch(part -> part.pieces() == row.pieces())) {
            return row.pieces() == 1 ? all : apportion(parts, this::oneSteps, total);
        }
        long[] one = new long[all.length];
        for (int i = 0; i < all.length; i++) {
            YieldRow part = parts.get(i);
            one[i] = part.pieces() == 1 ? all[i] : Math.round(oneSteps(part));
        }
        return one;
    }

    private static long[] apportion(List<YieldRow> parts, ToDoubleFunction<YieldRow> steps, long total) {
        return LargestRemainder.apportion(parts.stream().mapToDouble(steps).toArray(), total);
    }

    private double allSteps(YieldRow row) {
        return figures.steps(mean(row.allPieces()));
    }

    private double oneSteps(YieldRow row) {
        return figures.steps(mean(row.onePiece()));
    }

    private static double mean(Optional<Estimate> weight) {
        return weight.map(Estimate::mean).orElse(0.0);
    }

    private static double percentSteps(OptionalDouble percent) {
        return Figures.percentSteps(percent.orElse(0));
    }

    private Line line(YieldRow row, Printed printed) {
        return new Line(
                row.level(),
                row.name(),
                row.path().toString(),
                weights(row, printed),
                shares(row, printed),
                goesTo(row));
    }

    private Line.Weights weights(YieldRow row, Printed printed) {
        String pieces = Figures.number(row.pieces());
        return row.allPieces()
                .map(weight -> new Line.Weights(
                        pieces, figures.shown(printed.all()), figures.shown(printed.one()), figures.spreading(weight)))
                .orElse(new Line.Weights(pieces, Line.NOT_STATED, Line.NOT_STATED, Line.Spreading.UNKNOWN));
    }

    private static Line.Shares shares(YieldRow row, Printed printed) {
        String ofCut = row.percentOfCutAbove().isPresent() ? Figures.percent(printed.ofCutAbove()) : Line.NOT_STATED;
        String ofCarcass = row.percentOfCarcass().isPresent() ? Figures.percent(printed.ofCarcass()) : "";
        return new Line.Shares(
                row.level() == 0 ? "" : ofCut, row.allPieces().isPresent() ? ofCarcass : Line.NOT_STATED);
    }

    static String goesTo(YieldRow row) {
        return row.kind() == Kind.LOSS
                ? "lost"
                : row.home().map(PartLines::goesTo).orElse("");
    }

    static String goesTo(Home home) {
        if (home instanceof Home.ToStream to) {
            return to.stream().text();
        }
        return home instanceof Home.Product ? "product" : Line.NOT_STATED;
    }
}
