package dev.gambrel.yields.working;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.quantity.Expected;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.quantity.Unit;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Share;
import dev.gambrel.tree.Way;
import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;

/** Makes the tree without ways, as far down as it is known which way each cut goes. */
final class WorkedTree {
    private static final Quantity NO_SPREAD = Quantity.of("0", Unit.PERCENT);

    private final CutTree tree;
    private final Chooser chooser;
    private final Map<TreePath, List<Split>> weighed;
    private final List<WayUsed> used = new ArrayList<>();
    private final List<TreePath> toWeigh = new ArrayList<>();
    private final List<Diagnostic> found = new ArrayList<>();
    private final List<Part> parts;

    private WorkedTree(CutTree tree, Chooser chooser, Map<TreePath, List<Split>> weighed) {
        this.tree = tree;
        this.chooser = chooser;
        this.weighed = weighed;
        this.parts = worked(tree.parts(), TreePath.ROOT);
    }

    static WorkedTree of(CutTree tree, Chooser chooser, Map<TreePath, List<Split>> weighed) {
        return new WorkedTree(tree, chooser, weighed);
    }

    /** The tree; cuts that have yet to be weighed have no parts in it. */
    Worked worked() {
        return new Worked(tree.withParts(parts), used);
    }

    /** Cuts of which a piece must be weighed before it is known which way it goes. */
    List<TreePath> toWeigh() {
        return toWeigh;
    }

    /** Grades that are asked for and not given. */
    List<Diagnostic> found() {
        return found;
    }

    private List<Part> worked(List<Part> parts, TreePath path) {
        List<Way> ways = WaysInTree.among(parts);
        if (!ways.isEmpty()) {
            return ways(ways, path);
        }
        List<Part> plain = new ArrayList<>(parts.size());
        for (Part part : parts) {
            plain.add(part instanceof Cut cut ? worked(cut, path.then(cut.name()), cut.share()) : part);
        }
        return plain;
    }

    private Cut worked(Cut cut, TreePath path, Share share) {
        List<Part> parts = worked(cut.parts(), path);
        return new Cut(cut.name(), cut.pieces(), share, cut.description(), parts, cut.home(), cut.portions());
    }

    private List<Part> ways(List<Way> ways, TreePath cut) {
        Chooser.Answer answer = weighed.containsKey(cut)
                ? new Chooser.Answer.Known(weighed.get(cut))
                : chooser.of(cut, ways, tree.carcass());
        if (answer instanceof Chooser.Answer.Known known) {
            return inUse(ways, known.splits(), cut);
        } else if (answer instanceof Chooser.Answer.NotGiven notGiven) {
            found.add(notGiven.finding());
        } else {
            toWeigh.add(cut);
        }
        return List.of();
    }

    private List<Part> inUse(List<Way> ways, List<Split> splits, TreePath cut) {
        List<WayUsed> here = new ArrayList<>();
        for (int i = 0; i < ways.size(); i++) {
            if (splits.get(i).pieces() > 0) {
                here.add(new WayUsed(cut, ways.get(i), splits.get(i), chooser.isOrdered(cut)));
            }
        }
        used.addAll(here);
        List<Part> works = new ArrayList<>(here.size());
        here.forEach(way -> works.add(worked(way.way().work(), way.path(), share(way.split()))));
        return works;
    }

    private static Share share(Split split) {
        Quantity percent = new Quantity(BigDecimal.valueOf(100 * split.weight()), Unit.PERCENT);
        return new Share.Stated(new Expected.PlusMinus(percent, NO_SPREAD));
    }
}
