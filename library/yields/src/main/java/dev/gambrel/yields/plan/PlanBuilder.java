package dev.gambrel.yields.plan;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.BasisStep;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.TrimRule;
import dev.gambrel.yields.closure.CutShares;
import dev.gambrel.yields.working.Worked;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Lays a tree out level by level, so that parents come before children and the parts of a cut stand together. */
public final class PlanBuilder {
    private static final Home NOWHERE = new Home.NotStated();

    private final CutTree tree;
    private final List<BasisStep> chain;
    private final Map<TreePath, Double> worked;
    private final List<Node> nodes = new ArrayList<>();
    private final List<List<Part>> leaving = new ArrayList<>();
    private final List<Integer> first = new ArrayList<>();
    private final List<CutShares> shares = new ArrayList<>();

    private PlanBuilder(Worked worked, List<BasisStep> chain) {
        this.tree = worked.tree();
        this.worked = worked.pieces();
        this.chain = chain;
    }

    /**
     * Lays out a tree without ways below a chain of steps from the basis weighed to the specification's.
     *
     * @throws IllegalArgumentException if the parts of a cut do not close
     */
    public static YieldPlan build(Worked worked, List<BasisStep> chain) {
        return new PlanBuilder(worked, chain).build();
    }

    private YieldPlan build() {
        addCarcass(-1, 0);
        for (int v = 0; v < nodes.size(); v++) {
            first.add(nodes.size());
            shares.add(expand(v));
        }
        first.add(nodes.size());
        return new YieldPlan(
                nodes.toArray(Node[]::new),
                first.stream().mapToInt(Integer::intValue).toArray(),
                shares.toArray(CutShares[]::new),
                chain.size());
    }

    /** Adds what leaves a node, and tells its shares. */
    private CutShares expand(int v) {
        List<Share> written = new ArrayList<>();
        int closing = -1;
        for (Part part : leaving.get(v)) {
            closing = part instanceof Part.Rest ? written.size() : closing;
            written.add(part.share());
            add(node(v, part), part instanceof Cut cut ? cut.parts() : List.of());
        }
        if (!written.isEmpty() && addWhatIsLeft(v)) {
            closing = written.size();
            written.add(new Share.NotStated());
        }
        return written.isEmpty() ? CutShares.NOTHING : CutShares.of(written, closing);
    }

    /** Below a step between bases stands the carcass on the next; below a cut that is not divided the trimmed cut. */
    private boolean addWhatIsLeft(int v) {
        Node node = nodes.get(v);
        if (node.kind() == Kind.CARCASS) {
            boolean isStep = node.level() < chain.size();
            if (isStep) {
                addCarcass(v, node.level() + 1);
            }
            return isStep;
        }
        boolean isDivided = leaving.get(v).stream().anyMatch(part -> part instanceof Cut || part instanceof Part.Rest);
        if (!isDivided) {
            add(trimmed(v), List.of());
        }
        return !isDivided;
    }

    private void add(Node node, List<Part> parts) {
        nodes.add(node);
        leaving.add(parts);
    }

    private void addCarcass(int above, int level) {
        boolean isStep = level < chain.size();
        add(carcass(above, level), isStep ? List.of(loss(chain.get(level))) : tree.parts());
    }

    private static Part loss(BasisStep step) {
        return new Part.Loss(step.loss(), new Share.Stated(step.share()));
    }

    private Node carcass(int above, int level) {
        String name = chain.isEmpty()
                ? "carcass"
                : "carcass, "
                        + (level < chain.size()
                                        ? chain.get(level).from()
                                        : tree.carcass().basis())
                                .words();
        return new Node(Kind.CARCASS, name, TreePath.ROOT, above, level, Node.Pieces.ONE, NOWHERE);
    }

    private Node trimmed(int v) {
        Node whole = nodes.get(v);
        String name = whole.name() + ", trimmed";
        return new Node(Kind.TRIMMED, name, whole.path(), v, whole.level() + 1, whole.pieces(), whole.home());
    }

    private Node node(int v, Part part) {
        Node above = nodes.get(v);
        TreePath path = above.path().then(part.name());
        Node.Pieces pieces = part instanceof Cut cut ? pieces(cut, path, above.pieces()) : above.pieces();
        return new Node(kind(part), called(part), path, v, above.level() + 1, pieces, part.home());
    }

    private Node.Pieces pieces(Cut cut, TreePath path, Node.Pieces above) {
        return new Node.Pieces(cut.pieces().perCarcass(above.whole()), above.worked() * worked.getOrDefault(path, 1.0));
    }

    private static Kind kind(Part part) {
        if (part instanceof Cut) {
            return Kind.CUT;
        }
        if (part instanceof Part.Bone) {
            return Kind.BONE;
        }
        if (part instanceof Part.Trim) {
            return Kind.TRIM;
        }
        return part instanceof Part.Loss ? Kind.LOSS : Kind.REST;
    }

    /** A gland is called one in print: "popliteal gland". */
    private static String called(Part part) {
        boolean gland = part instanceof Part.Trim trim && trim.rule() instanceof TrimRule.GlandRemoval;
        return gland && !part.name().key().endsWith(" gland")
                ? part.name() + " gland"
                : part.name().text();
    }
}
