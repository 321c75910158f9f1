package dev.gambrel.cli.origin.report;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Cut;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.Way;
import java.util.ArrayList;
import java.util.List;

/**
 * Something of a specification that has an address.
 *
 * @param path its address
 * @param kind what it is
 */
public record NamedPart(TreePath path, Kind kind) {
    /** What can have an address. */
    public enum Kind {
        /** The carcass. */
        CARCASS,
        /** A cut. */
        CUT,
        /** A way in which a cut is worked. */
        WAY,
        /** A bone, a trim, a loss or the rest. */
        LINE,
        /** A portion. */
        PORTION
    }

    /** All of a specification: the carcass, and what stands in each cut below it, in the order of the tree. */
    static List<NamedPart> of(CutTree tree) {
        List<NamedPart> all = new ArrayList<>(List.of(new NamedPart(TreePath.ROOT, Kind.CARCASS)));
        add(tree.parts(), TreePath.ROOT, all);
        return all;
    }

    private static void add(List<Part> parts, TreePath above, List<NamedPart> all) {
        for (Part part : parts) {
            if (part instanceof Cut cut) {
                add(cut, Kind.CUT, above, all);
            } else if (part instanceof Way way) {
                add(way.work(), Kind.WAY, above, all);
            } else {
                all.add(new NamedPart(above.then(part.name()), Kind.LINE));
            }
        }
    }

    private static void add(Cut cut, Kind kind, TreePath above, List<NamedPart> all) {
        TreePath path = above.then(cut.name());
        all.add(new NamedPart(path, kind));
        add(cut.parts(), path, all);
        cut.portions().forEach(portion -> all.add(new NamedPart(path.then(portion.name()), Kind.PORTION)));
    }

    /** Whether it belongs to the cut or carcass that it stands under. */
    boolean isLine() {
        return kind == Kind.WAY || !hasLines();
    }

    /** Whether lines may stand in its braces. */
    boolean hasLines() {
        return kind != Kind.LINE && kind != Kind.PORTION;
    }

    boolean endsWith(List<TradeName> names) {
        int from = path.names().size() - names.size();
        return from >= 0 && path.names().subList(from, path.names().size()).equals(names);
    }
}
