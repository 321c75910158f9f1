package dev.gambrel.diagnostic;

import dev.gambrel.text.TradeName;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * The address of a part in a cut tree: the names from the carcass down, without the carcass itself.
 *
 * @param names outermost first; empty for the carcass
 */
public record TreePath(List<TradeName> names) {
    /** The carcass itself. */
    public static final TreePath ROOT = new TreePath(List.of());

    /** Copies the names. */
    public TreePath {
        names = List.copyOf(names);
    }

    /**
     * The address of a part one level down.
     *
     * @param name the part's name
     * @return the longer path
     */
    public TreePath then(TradeName name) {
        List<TradeName> longer = new ArrayList<>(names.size() + 1);
        longer.addAll(names);
        longer.add(name);
        return new TreePath(longer);
    }

    /**
     * The address of what a part leaves.
     *
     * @return the path without its last name; the carcass is its own parent
     */
    public TreePath parent() {
        return names.isEmpty() ? this : new TreePath(names.subList(0, names.size() - 1));
    }

    /**
     * Whether this is the address of something at or below another.
     *
     * @param other a path
     * @return true if the other's names begin this one's
     */
    public boolean isWithin(TreePath other) {
        return names.size() >= other.names.size()
                && names.subList(0, other.names.size()).equals(other.names);
    }

    /**
     * The last name, or "carcass" for the carcass.
     *
     * @return one name
     */
    public String last() {
        return names.isEmpty() ? "carcass" : names.get(names.size() - 1).text();
    }

    /**
     * The path as people read it.
     *
     * @return for example "leg / topside / steak"; "carcass" for the carcass
     */
    @Override
    public String toString() {
        return names.isEmpty() ? "carcass" : names.stream().map(TradeName::text).collect(Collectors.joining(" / "));
    }
}
