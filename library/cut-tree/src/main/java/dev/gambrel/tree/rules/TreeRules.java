package dev.gambrel.tree.rules;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.FirstFindings;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.limits.Limits;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.allowance.Allowances;
import dev.gambrel.tree.allowance.AllowedWarning;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.TreeCode;
import dev.gambrel.tree.rules.anatomy.BoneBalance;
import dev.gambrel.tree.rules.anatomy.BoneInLean;
import dev.gambrel.tree.rules.anatomy.GlandRegions;
import dev.gambrel.tree.rules.anatomy.KnownAnatomy;
import dev.gambrel.tree.rules.anatomy.PieceNames;
import dev.gambrel.tree.rules.anatomy.PublishedShares;
import dev.gambrel.tree.rules.anatomy.SkeletonNumbers;
import dev.gambrel.tree.rules.bench.Distances;
import dev.gambrel.tree.rules.bench.MatchedPairs;
import dev.gambrel.tree.rules.bench.OrderOfWork;
import dev.gambrel.tree.rules.bench.PlausiblePortions;
import dev.gambrel.tree.rules.bench.PortionsFromPiece;
import dev.gambrel.tree.rules.bench.PrecedenceSaid;
import dev.gambrel.tree.rules.bench.RibCounts;
import dev.gambrel.tree.rules.bench.SizesSaid;
import dev.gambrel.tree.rules.bench.SlicesFit;
import dev.gambrel.tree.rules.bench.TreatedTissues;
import dev.gambrel.tree.rules.choice.KnownGrades;
import dev.gambrel.tree.rules.choice.SeparateConditions;
import dev.gambrel.tree.rules.choice.SettledWays;
import dev.gambrel.tree.rules.choice.WaysAlone;
import dev.gambrel.tree.rules.estimate.EstimateRules;
import dev.gambrel.tree.rules.mass.AgreeingShares;
import dev.gambrel.tree.rules.mass.ClosedShares;
import dev.gambrel.tree.rules.mass.KnownBases;
import dev.gambrel.tree.rules.mass.PlausibleShares;
import dev.gambrel.tree.rules.mass.PossibleSpreads;
import dev.gambrel.tree.rules.mass.WholeCuts;
import java.util.HashSet;
import java.util.List;
import java.util.Set;

/** All rules of a cut tree, in the order in which their findings are listed. */
public final class TreeRules {
    private static final List<Rule> RULES = List.of(
            new DistinctNames(),
            new DeclaredStreams(),
            new DeclaredSources(),
            new KnownBases(),
            new OrderedRanges(),
            new PlausibleShares(),
            new PlausibleWeights(),
            new SingleSteps(),
            new ClosedShares(),
            new PossibleSpreads(),
            new AgreeingShares(),
            new WholeCuts(),
            new WaysAlone(),
            new SettledWays(),
            new KnownGrades(),
            new SeparateConditions(),
            new KnownAnatomy(),
            new BoneBalance(),
            new SkeletonNumbers(),
            new GlandRegions(),
            new PieceNames(),
            new Homes(),
            new BoneInLean(),
            new OnlyFrom(),
            new JudgedAlike(),
            new PortionTargets(),
            new SizesSaid(),
            new PrecedenceSaid(),
            new PlausiblePortions(),
            new SlicesFit(),
            new PortionsFromPiece(),
            new MatchedPairs(),
            new OrderOfWork(),
            new TreatedTissues(),
            new RibCounts(),
            new Distances(),
            new PublishedShares(),
            new EstimateRules(),
            new SoundTerms());

    /** A requirement says nothing of how mass is divided. */
    private static final List<Rule> OF_REQUIREMENTS = List.of(
            new DistinctNames(),
            new DeclaredSources(),
            new OrderedRanges(),
            new PlausibleWeights(),
            new WaysAlone(),
            new KnownGrades(),
            new KnownAnatomy(),
            new SkeletonNumbers(),
            new GlandRegions(),
            new PieceNames(),
            new PortionTargets(),
            new PlausiblePortions(),
            new TreatedTissues(),
            new RibCounts(),
            new Distances(),
            new AskedOnly(),
            new SoundTerms());

    private TreeRules() {}

    /**
     * Holds a tree against every rule, within the usual limits.
     *
     * <p>Costs O(nodes). Findings are placed by {@link dev.gambrel.diagnostic.Place.InTree}.
     *
     * @param tree any tree
     * @return what was found, the first 1,000 findings; the tree may be used if none is an error
     */
    public static List<Diagnostic> check(CutTree tree) {
        return check(tree, Limits.DEFAULT, Set.of());
    }

    /**
     * Holds a tree against every rule, and draws no conclusion from parts that could not be read.
     *
     * @param tree any tree
     * @param limits how many parts, and how deep, are taken; beyond them no other rule is asked
     * @param inDoubt paths where only a stand-in for something unreadable stands
     * @return what was found
     */
    public static List<Diagnostic> check(CutTree tree, Limits limits, Set<TreePath> inDoubt) {
        List<Diagnostic> size = TreeSize.check(tree, limits);
        if (!size.isEmpty()) {
            return size;
        }
        FirstFindings found = new FirstFindings();
        Allowances allowances = new Allowances(tree);
        ask(Inspection.of(tree, inDoubt), allowances, found);
        if (inDoubt.isEmpty() && !Result.hasError(found.list())) {
            allowances.unused(found.list(), found);
        }
        return withoutEchoes(found.list());
    }

    /**
     * The warnings that {@link #check} does not list, because the specification allows them.
     *
     * <p>Asks the rules anew where anything is allowed: O(nodes).
     *
     * @param tree a tree that keeps the rules
     * @return each with what allows it, the first 1,000
     */
    public static List<AllowedWarning> allowed(CutTree tree) {
        if (tree.specification().allowances().isEmpty()) {
            return List.of();
        }
        Allowances allowances = new Allowances(tree);
        ask(Inspection.of(tree, Set.of()), allowances, new FirstFindings());
        return allowances.allowed();
    }

    private static void ask(Inspection inspection, Allowances allowances, FirstFindings found) {
        allowances.check(found);
        List<Rule> rules = inspection.tree().isRequirement() ? OF_REQUIREMENTS : RULES;
        rules.forEach(rule -> rule.check(inspection, allowances.before(found)));
    }

    /** Of two parts of one name only that is told, since their address shows the first. */
    private static List<Diagnostic> withoutEchoes(List<Diagnostic> found) {
        Set<TreePath> twice = new HashSet<>();
        for (Diagnostic finding : found) {
            if (finding.code() == TreeCode.DUPLICATE_PART) {
                twice.add(((Place.InTree) finding.place()).path());
            }
        }
        return twice.isEmpty()
                ? found
                : found.stream().filter(f -> !isEcho(f, twice)).toList();
    }

    private static boolean isEcho(Diagnostic finding, Set<TreePath> twice) {
        return finding.code() != TreeCode.DUPLICATE_PART
                && finding.place() instanceof Place.InTree tree
                && twice.contains(tree.path());
    }
}
