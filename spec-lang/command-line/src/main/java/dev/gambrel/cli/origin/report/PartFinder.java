package dev.gambrel.cli.origin.report;

import dev.gambrel.cli.origin.report.NamedPart.Kind;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.NearestName;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.CutTree;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Collectors;

/** Finds parts by the names that somebody wrote, with slashes between: "leg / topside", or "topside" alone. */
public final class PartFinder {
    private static final TradeName CARCASS = TradeName.of(TreePath.ROOT.last());

    private final List<NamedPart> all;
    private final Map<TreePath, List<NamedPart>> ownLines;

    /**
     * A finder over a tree.
     *
     * @param tree the tree
     */
    public PartFinder(CutTree tree) {
        this.all = NamedPart.of(tree);
        this.ownLines = all.stream()
                .filter(NamedPart::isLine)
                .collect(Collectors.groupingBy(line -> line.path().parent()));
    }

    /**
     * The parts that are meant.
     *
     * @param words names with slashes between; "carcass" alone is the carcass, and "carcass / rest" only the rest at the top
     * @return all parts whose address ends so, in the order of the tree; none if there are none
     */
    public List<NamedPart> find(String words) {
        return names(words).map(this::find).orElse(List.of());
    }

    private List<NamedPart> find(List<TradeName> names) {
        if (names.get(0).equals(CARCASS)) {
            TreePath path = new TreePath(names.subList(1, names.size()));
            return all.stream().filter(part -> part.path().equals(path)).toList();
        }
        return all.stream().filter(part -> part.endsWith(names)).toList();
    }

    private static Optional<List<TradeName>> names(String words) {
        List<TradeName> names = new ArrayList<>();
        for (String name : words.split("/", -1)) {
            if (!TradeName.isAcceptable(name)) {
                return Optional.empty();
            }
            names.add(TradeName.of(name));
        }
        return Optional.of(names);
    }

    /**
     * What was probably meant by words that find nothing.
     *
     * @param words the words
     * @return the address of the part that is called most like it, if any is
     */
    public Optional<TreePath> nearest(String words) {
        return names(words).flatMap(names -> {
            TradeName last = names.get(names.size() - 1);
            TreePath above = new TreePath(names.subList(0, names.size() - 1));
            return nearest(last, below(above)).or(() -> nearest(last, below(TreePath.ROOT)));
        });
    }

    private List<NamedPart> below(TreePath above) {
        return all.stream()
                .filter(part -> part.kind() != Kind.CARCASS && part.path().isWithin(above))
                .toList();
    }

    private static Optional<TreePath> nearest(TradeName name, List<NamedPart> among) {
        List<TradeName> known = among.stream()
                .map(part -> TradeName.of(part.path().last()))
                .distinct()
                .toList();
        return NearestName.of(name, known)
                .flatMap(near -> among.stream()
                        .map(NamedPart::path)
                        .filter(path -> TradeName.of(path.last()).equals(near))
                        .findFirst());
    }

    /** What stands directly under a part, cuts left out. */
    List<NamedPart> ownLinesOf(NamedPart part) {
        return part.hasLines() ? ownLines.getOrDefault(part.path(), List.of()) : List.of();
    }
}
