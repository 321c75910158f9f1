package dev.gambrel.yields.batch;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Basis;
import dev.gambrel.tree.BasisStep;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.estimate.Equation;
import dev.gambrel.tree.inspection.EquationOrder;
import dev.gambrel.tree.inspection.Vocabulary;
import dev.gambrel.yields.BasisChains;
import dev.gambrel.yields.YieldCode;
import dev.gambrel.yields.Yields;
import dev.gambrel.yields.estimate.OtherShares;
import dev.gambrel.yields.plan.PlanBuilder;
import dev.gambrel.yields.plan.YieldPlan;
import dev.gambrel.yields.working.OpenWays;
import dev.gambrel.yields.working.Worked;
import dev.gambrel.yields.working.Working;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.IntStream;

/** Compiles a specification for a batch. */
final class BatchPlanBuilder {
    private final CutTree tree;
    private final OpenWays ways;
    private final List<BasisStep> chain;
    private final Basis basis;
    private final Vocabulary vocabulary;
    private final List<Equation> equations;

    private BatchPlanBuilder(CutTree tree, OpenWays ways, List<BasisStep> chain, Basis basis) {
        this.tree = tree;
        this.ways = ways;
        this.chain = chain;
        this.basis = basis;
        this.vocabulary = new Vocabulary(tree.carcass().predictors());
        this.equations = equations();
    }

    static Result<BatchPlan> build(CutTree tree, Working working, Basis basis) {
        if (tree.isRequirement()) {
            return Result.failed(Yields.of(tree).forTypicalCarcass().diagnostics());
        }
        Map<Basis, List<BasisStep>> chains = BasisChains.of(tree.carcass());
        if (!chains.containsKey(basis)) {
            return Result.failed(List.of(differs(basis, tree.carcass().basis())));
        }
        Result<OpenWays> ways = OpenWays.of(tree, working);
        return ways.value()
                .map(open ->
                        Result.of(new BatchPlanBuilder(tree, open, chains.get(basis), basis).plan(working), List.of()))
                .orElseGet(() -> Result.failed(ways.diagnostics()));
    }

    private static Diagnostic differs(Basis given, Basis wanted) {
        return Diagnostic.of(YieldCode.BASIS_DIFFERS, new Place.InTree(TreePath.ROOT, Aspect.BAND))
                .with("given", given.words())
                .with("wanted", wanted.words())
                .help("Give the weights " + wanted.words() + ".");
    }

    /** The equations that shares are estimated by and those that they stand on, each after those that it names. */
    private List<Equation> equations() {
        Set<TradeName> wanted = new LinkedHashSet<>();
        addEstimated(ways.worked().tree().parts(), wanted);
        List<Equation> sorted = new EquationOrder(tree.carcass().predictors().equations(), vocabulary).sorted();
        List<Equation> using = new ArrayList<>();
        for (int i = sorted.size() - 1; i >= 0; i--) {
            if (wanted.contains(sorted.get(i).name())) {
                wanted.addAll(EquationOrder.names(sorted.get(i)));
                using.add(sorted.get(i));
            }
        }
        Collections.reverse(using);
        return using;
    }

    private static void addEstimated(List<Part> parts, Set<TradeName> names) {
        for (Part part : parts) {
            if (part.share() instanceof Share.Estimated estimated) {
                names.add(estimated.equation());
            }
            if (part instanceof Cut cut) {
                addEstimated(cut.parts(), names);
            }
        }
    }

    /** Whether a share is written as one of something further up as well. */
    private static boolean isWrittenTwice(List<Part> parts) {
        return parts.stream()
                .anyMatch(part -> part.share() instanceof Share.Stated stated
                                && !stated.others().isEmpty()
                        || part instanceof Cut cut && isWrittenTwice(cut.parts()));
    }

    private BatchPlan plan(Working working) {
        Readings readings = Readings.of(tree, basis);
        Columns columns = new Columns(vocabulary, basis, readings.names());
        CutTree open = ways.worked().tree();
        Map<TradeName, Share> placeholders = new LinkedHashMap<>();
        equations.forEach(equation -> placeholders.put(equation.name(), EstimatedCuts.placeholder(equation)));
        List<Part> stated = new OtherShares(share ->
                        share instanceof Share.Estimated estimated ? placeholders.get(estimated.equation()) : share)
                .parts(open.parts());
        YieldPlan plan = PlanBuilder.build(
                new Worked(open.withParts(stated), ways.worked().ways()), chain);
        List<Decision> decisions = new ArrayList<>(new EstimatedCuts(plan, equations).of(open));
        decisions.addAll(new OpenCuts(plan, tree, chain, working.pairs()).of(ways.open()));
        if (!equations.isEmpty() && isWrittenTwice(open.parts())) {
            decisions.add(new Decision.Unsettled(
                    0, IntStream.range(plan.firstPart(0), plan.firstPart(1)).toArray()));
        }
        decisions.sort(Comparator.comparingInt(Decision::cut));
        Layout layout = Layout.of(plan, ways.worked().pieces(), decisions);
        Program.Steps program = new ProgramBuilder(columns).of(equations);
        return new BatchPlan(
                tree,
                new BatchPlan.Compiled(plan, layout, decisions, program, readings),
                Warnings.of(tree, chain, equations, columns),
                new Exactly(tree, working, basis, readings, plan));
    }
}
