package dev.gambrel.yields.estimate;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.diagnostic.Severity;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.Way;
import dev.gambrel.tree.rules.TreeRules;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;

/**
 * A specification with its estimated shares put in for one carcass. Where one estimate gives several shares, their spreads are
 * taken as independent.
 */
public final class EstimatedTree {
    private final Map<TradeName, Share> shares = new HashMap<>();
    private final List<Diagnostic> found = new ArrayList<>();
    private final Estimator estimator;
    private final Measurements given;

    private EstimatedTree(Estimator estimator, Measurements given) {
        this.estimator = estimator;
        this.given = given;
    }

    /**
     * Whether a specification leaves shares to be estimated.
     *
     * @param tree any tree
     * @return true if a share anywhere is estimated
     */
    public static boolean isNeeded(CutTree tree) {
        return isNeeded(tree.parts());
    }

    private static boolean isNeeded(List<Part> parts) {
        return parts.stream()
                .anyMatch(part -> part.share() instanceof Share.Estimated
                        || part instanceof Cut cut && isNeeded(cut.parts())
                        || part instanceof Way way && isNeeded(way.work().parts()));
    }

    /**
     * Puts in what the estimates give. Costs O(parts) beside the estimates, each worked out once.
     *
     * @param tree a tree in which {@link TreeRules} finds no error
     * @param given what was measured on the carcass
     * @return a tree with every share stated, with warnings for readings outside their ranges; or what is missing, or what
     *     the estimated shares break
     */
    public static Result<CutTree> of(CutTree tree, Measurements given) {
        EstimatedTree working = new EstimatedTree(Estimator.of(tree), given);
        List<Part> parts = new OtherShares(working::share).parts(tree.parts());
        if (Result.hasError(working.found)) {
            return Result.failed(working.found);
        }
        CutTree settled = tree.withParts(parts);
        TreeRules.check(settled).stream()
                .filter(finding -> finding.severity() == Severity.ERROR)
                .forEach(working.found::add);
        return Result.hasError(working.found) ? Result.failed(working.found) : Result.of(settled, working.found);
    }

    private Share share(Share share) {
        return share instanceof Share.Estimated estimated
                ? shares.computeIfAbsent(estimated.equation(), this::estimate)
                : share;
    }

    private Share estimate(TradeName equation) {
        Result<Estimated> result = estimator.estimate(equation, given);
        found.addAll(result.diagnostics());
        return result.value()
                .<Share>map(estimated -> new Share.Stated(
                        estimated.expected(), List.of(), estimated.equation().sources()))
                .orElse(new Share.NotStated());
    }
}
