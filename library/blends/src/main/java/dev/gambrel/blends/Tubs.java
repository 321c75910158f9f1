package dev.gambrel.blends;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.term.Judged;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashSet;
import java.util.List;
import java.util.Optional;
import java.util.Set;

/** Tubs that may go into one blend: their leans are all judged in one way, and no two have the same name. */
public final class Tubs {
    private final List<Tub> all;

    private Tubs(List<Tub> all) {
        this.all = all;
    }

    /**
     * Puts tubs side by side.
     *
     * @param tubs at least one, in any order
     * @return the tubs, or {@link BlendCode#LEAN_JUDGED_APART} or {@link BlendCode#TUB_TWICE}
     * @throws IllegalArgumentException if there is none
     */
    public static Result<Tubs> of(List<Tub> tubs) {
        if (tubs.isEmpty()) {
            throw new IllegalArgumentException("nothing to blend");
        }
        List<Diagnostic> wrong = new ArrayList<>();
        Set<TradeName> names = new HashSet<>();
        Tub first = tubs.get(0);
        for (Tub tub : tubs) {
            if (!names.add(tub.name())) {
                wrong.add(BlendFindings.twice(tub));
            }
            if (tub.lean().judged() != first.lean().judged()) {
                wrong.add(BlendFindings.judgedApart(first, tub));
            }
        }
        return wrong.isEmpty() ? Result.of(new Tubs(sorted(tubs)), List.of()) : Result.failed(wrong);
    }

    private static List<Tub> sorted(List<Tub> tubs) {
        return tubs.stream().sorted(Comparator.comparing(Tub::name)).toList();
    }

    /**
     * The tubs.
     *
     * @return in the order of their names
     */
    public List<Tub> all() {
        return all;
    }

    /**
     * How the lean of every one of them is found.
     *
     * @return by eye or by analysis
     */
    public Judged judged() {
        return all.get(0).lean().judged();
    }

    /**
     * All that is there.
     *
     * @return kilograms
     */
    public double kilograms() {
        return all.stream().mapToDouble(Tub::kilograms).sum();
    }

    /** The tub of a name. */
    Optional<Tub> named(TradeName name) {
        return all.stream().filter(tub -> tub.name().equals(name)).findFirst();
    }
}
