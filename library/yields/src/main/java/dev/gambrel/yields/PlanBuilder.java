package dev.gambrel.yields;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.tree.BasisStep;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Home;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Share;
import dev.gambrel.yields.YieldRow.Kind;
import java.util.ArrayList;
import java.util.List;

/** Lays a tree out level by level, so that parents come before children and the parts of a cut stand together. */
final class PlanBuilder {
    private static final Home NOWHERE = new Home.NotStated();

    private final CutTree tree;
    private final List<BasisStep> chain;
    private final List<Node> nodes = new ArrayList<>();
    private final List<Part> parts = new ArrayList<>();
    private final List<Integer> first = new ArrayList<>();
    private final List<CutShares> shares = new ArrayList<>();

    private PlanBuilder(CutTree tree, List<BasisStep> chain) {
        this.tree = tree;
        this.chain = chain;
    }

    /**
     * Lays out a tree below a chain of steps from the basis weighed to the specification's.
     *
     * @throws IllegalArgumentException if the parts of a cut do not close
     */
    static YieldPlan build(CutTree tree, List<BasisStep> chain) {
        return new PlanBuilder(tree, chain).build();
    }

    private YieldPlan build() {
        add(carcass(-1, 0), null);
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

    /** The shares of what leaves a node, or null if nothing does. */
    private CutShares expand(int v) {
        Node node = nodes.get(v);
        if (node.kind() == Kind.CARCASS && node.level() < chain.size()) {
            BasisStep step = chain.get(node.level());
            Part loss = new Part.Loss(step.loss(), new Share.Stated(step.share()));
            return expand(v, List.of(loss), carcass(v, node.level() + 1));
        }
        if (node.kind() == Kind.CARCASS) {
            return expand(v, tree.parts(), null);
        }
        if (node.kind() == Kind.CUT
                && parts.get(v) instanceof Cut cut
                && !cut.parts().isEmpty()) {
            return expand(v, cut.parts(), cut.isDivided() ? null : trimmed(v, cut));
        }
        return null;
    }

    private CutShares expand(int v, List<Part> leaving, Node left) {
        List<Share> written = new ArrayList<>(leaving.size() + 1);
        int closing = -1;
        for (Part part : leaving) {
            if (part instanceof Part.Rest) {
                closing = written.size();
            }
            written.add(part.share());
            add(node(v, part), part);
        }
        if (left != null) {
            closing = written.size();
            written.add(new Share.NotStated());
            add(left, null);
        }
        return leaving.isEmpty() ? null : CutShares.of(written, closing);
    }

    private void add(Node node, Part part) {
        nodes.add(node);
        parts.add(part);
    }

    private Node carcass(int above, int level) {
        String name = chain.isEmpty()
                ? "carcass"
                : "carcass, "
                        + (level < chain.size()
                                        ? chain.get(level).from()
                                        : tree.carcass().basis())
                                .words();
        return new Node(Kind.CARCASS, name, TreePath.ROOT, above, level, 1, NOWHERE);
    }

    private Node trimmed(int v, Cut cut) {
        Node whole = nodes.get(v);
        String name = whole.name() + ", trimmed";
        return new Node(Kind.TRIMMED, name, whole.path(), v, whole.level() + 1, whole.pieces(), cut.home());
    }

    private Node node(int v, Part part) {
        Node above = nodes.get(v);
        int pieces = part instanceof Cut cut ? cut.pieces().perCarcass(above.pieces()) : above.pieces();
        TreePath path = above.path().then(part.name());
        return new Node(kind(part), part.name().text(), path, v, above.level() + 1, pieces, home(part));
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

    private static Home home(Part part) {
        if (part instanceof Cut cut) {
            return cut.home();
        }
        if (part instanceof Part.Bone bone) {
            return bone.home();
        }
        if (part instanceof Part.Trim trim) {
            return trim.home();
        }
        return part instanceof Part.Rest rest ? rest.home() : NOWHERE;
    }
}
