package dev.gambrel.compiler.origin;

import dev.gambrel.compiler.meaning.Located;
import dev.gambrel.compiler.syntax.Keyword;
import dev.gambrel.text.Span;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;

/** The lines that a tree was made from; only the compiler can make it. Immutable. */
public final class WrittenLines {
    private final Map<Keyword, List<Located>> top = new EnumMap<>(Keyword.class);
    private final List<Located> titles;
    private final List<Located> parts;
    private final List<Located> terms;
    private final List<Located> steps;
    private final List<Located> allowances;
    private final Map<Span, Span> earlier;

    /**
     * Copies the lists.
     *
     * @param top the lines at the top of all files together, by keyword
     * @param titles those that say what it is called
     * @param parts those that the carcass is divided into
     * @param terms those that lay down terms for all of it, in the order of the tree
     * @param steps those that became steps between bases, in the order of the tree's steps
     * @param allowances those that allow warnings, in the order of the tree's allowances
     * @param earlier for the place of each clause that a revision wrote the place of the one that it replaced
     */
    @SuppressWarnings("exports")
    public WrittenLines(
            Map<Keyword, List<Located>> top,
            List<Located> titles,
            List<Located> parts,
            List<Located> terms,
            List<Located> steps,
            List<Located> allowances,
            Map<Span, Span> earlier) {
        top.forEach((keyword, lines) -> this.top.put(keyword, List.copyOf(lines)));
        this.titles = List.copyOf(titles);
        this.parts = List.copyOf(parts);
        this.terms = List.copyOf(terms);
        this.steps = List.copyOf(steps);
        this.allowances = List.copyOf(allowances);
        this.earlier = Map.copyOf(earlier);
    }

    /** The lines of one kind at the top. */
    List<Located> all(Keyword keyword) {
        return top.getOrDefault(keyword, List.of());
    }

    List<Located> titles() {
        return titles;
    }

    List<Located> terms() {
        return terms;
    }

    List<Located> parts() {
        return parts;
    }

    List<Located> steps() {
        return steps;
    }

    List<Located> allowances() {
        return allowances;
    }

    /** What a revision replaced by the words at a place, latest first. */
    List<Span> replacedBy(Span span) {
        List<Span> replaced = new ArrayList<>();
        for (Span at = earlier.get(span); at != null && !replaced.contains(at); at = earlier.get(at)) {
            replaced.add(at);
        }
        return replaced;
    }
}
