package dev.gambrel.yields.batch;

import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.estimate.Equation;
import dev.gambrel.yields.plan.YieldPlan;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/** Finds the lines of shares that are estimated. */
final class EstimatedCuts {
    private final YieldPlan plan;
    private final List<Equation> equations;
    private final List<Decision> found = new ArrayList<>();

    EstimatedCuts(YieldPlan plan, List<Equation> equations) {
        this.plan = plan;
        this.equations = equations;
    }

    /** Nothing, with the spread that the share will have. */
    static Share placeholder(Equation equation) {
        Quantity nothing = Quantity.of("0", Unit.PERCENT);
        return new Share.Stated(
                equation.spread() instanceof Equation.Residual.Stated residual
                        ? new Expected.PlusMinus(nothing, residual.deviation())
                        : new Expected.Mean(nothing));
    }

    List<Decision> of(CutTree tree) {
        look(plan.carcass(), tree.parts());
        return found;
    }

    private void look(int cut, List<Part> parts) {
        int[] estimated = IntStream.range(0, parts.size())
                .filter(i -> parts.get(i).share() instanceof Share.Estimated)
                .toArray();
        if (estimated.length > 0) {
            found.add(decision(cut, parts, estimated));
        }
        for (int i = 0; i < parts.size(); i++) {
            if (parts.get(i) instanceof Cut below) {
                look(plan.firstPart(cut) + i, below.parts());
            }
        }
    }

    private Decision decision(int cut, List<Part> parts, int[] estimated) {
        int first = plan.firstPart(cut);
        int closing = closing(cut, parts);
        double stated = IntStream.range(first, plan.firstPart(cut + 1))
                .filter(v -> v != closing)
                .mapToDouble(plan::share)
                .sum();
        int[] by = IntStream.of(estimated).map(i -> equation(parts.get(i))).toArray();
        return new EstimatedCut(
                cut,
                IntStream.of(estimated).map(i -> first + i).toArray(),
                by,
                IntStream.of(by).mapToDouble(e -> deviation(equations.get(e))).toArray(),
                stated,
                closing);
    }

    /** The rest, or what trims, bones and losses leave of a cut. */
    private int closing(int cut, List<Part> parts) {
        int first = plan.firstPart(cut);
        return IntStream.range(0, parts.size())
                .filter(i -> parts.get(i) instanceof Part.Rest)
                .map(i -> first + i)
                .findFirst()
                .orElse(plan.firstPart(cut + 1) - 1);
    }

    private int equation(Part part) {
        Share.Estimated share = (Share.Estimated) part.share();
        return IntStream.range(0, equations.size())
                .filter(e -> equations.get(e).name().equals(share.equation()))
                .findFirst()
                .orElseThrow();
    }

    private static double deviation(Equation equation) {
        return equation.spread() instanceof Equation.Residual.Stated residual
                ? residual.deviation().value()
                : Double.NaN;
    }
}
