package dev.gambrel.compiler.revision;

import dev.gambrel.compiler.syntax.Clause;
import dev.gambrel.compiler.syntax.EstimateClause;
import dev.gambrel.compiler.syntax.Name;
import dev.gambrel.compiler.syntax.PortionClause;
import dev.gambrel.compiler.syntax.RevisionClause;
import dev.gambrel.compiler.syntax.TermClause;
import dev.gambrel.text.Span;
import dev.gambrel.text.TradeName;
import java.util.ArrayList;
import java.util.HashSet;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Which clause of the earlier line a clause of the revision takes the place of: the one that says the same kind of thing. */
final class ClauseSlots {
    /**
     * A kind of thing that a line says.
     *
     * @param kind the kind of clause
     * @param which what tells two of a kind apart, such as what a share is of or how a fat limit is judged
     */
    private record Slot(Class<?> kind, Object which) {}

    /** Also that of an estimate, and of when a cut is worked in a way: either may stand for such a share. */
    private static final Slot SHARE_OF_CUT_ABOVE = new Slot(Clause.Figures.class, List.of());

    private final TradeName whole;
    private final Map<Span, Span> earlier;

    /** Of a line under some cut; notes for each new clause the place of the one it replaces. */
    ClauseSlots(TradeName whole, Map<Span, Span> earlier) {
        this.whole = whole;
        this.earlier = earlier;
    }

    /** The earlier clauses with the new ones in their places; what was not said before comes last. O(clauses). */
    List<Clause> merge(List<Clause> before, List<Clause> after) {
        Map<Slot, List<Clause>> slots = new LinkedHashMap<>();
        before.forEach(clause -> said(slots, clause));
        Set<Slot> begun = new HashSet<>();
        for (Clause clause : withoutDifference(after)) {
            Slot slot = slot(clause);
            if (begun.add(slot)) {
                List<Clause> replaced = slots.getOrDefault(slot, List.of());
                replaced.stream().findFirst().ifPresent(old -> earlier.putIfAbsent(clause.span(), old.span()));
                slots.put(slot, new ArrayList<>(1));
            }
            said(slots, clause);
        }
        return slots.values().stream().flatMap(List::stream).toList();
    }

    private void said(Map<Slot, List<Clause>> slots, Clause clause) {
        slots.computeIfAbsent(slot(clause), s -> new ArrayList<>(1)).add(clause);
    }

    /** What a line says, without who gives way. */
    static List<Clause> withoutDifference(List<Clause> clauses) {
        return clauses.stream()
                .filter(clause -> !(clause instanceof RevisionClause.Difference))
                .toList();
    }

    private Slot slot(Clause clause) {
        if (clause instanceof Clause.Figures figures) {
            return new Slot(Clause.Figures.class, base(figures));
        } else if (clause instanceof Clause.FatLimit limit) {
            return new Slot(Clause.FatLimit.class, limit.where());
        } else if (clause instanceof Clause.Also also) {
            return new Slot(Clause.Also.class, also.name().text());
        } else if (clause instanceof Clause.Chosen || clause instanceof EstimateClause.EstimatedBy) {
            return SHARE_OF_CUT_ABOVE;
        } else if (clause instanceof PortionClause portion) {
            return slot(portion);
        } else if (clause instanceof TermClause.PackedIn) {
            return new Slot(PortionClause.Packed.class, "");
        } else if (clause instanceof EstimateClause estimate) {
            return new Slot(clause.getClass(), which(estimate));
        }
        return new Slot(clause.getClass(), "");
    }

    /** A range and a limit are one kind of thing, and so are all ways to hold a joint together. */
    private static Slot slot(PortionClause clause) {
        if (clause instanceof PortionClause.Bound bound) {
            return new Slot(bound.thick() ? PortionClause.ThickBetween.class : Clause.Between.class, "");
        } else if (clause instanceof PortionClause.Held) {
            return new Slot(PortionClause.Tied.class, "");
        } else if (clause instanceof PortionClause.Tare tare) {
            return new Slot(PortionClause.Tare.class, tare.what().text());
        }
        return new Slot(clause.getClass(), "");
    }

    /** Scores, ranges and limits are told apart by what they are of. */
    private static Object which(EstimateClause clause) {
        if (clause instanceof EstimateClause.Score score) {
            return score.word().text();
        } else if (clause instanceof EstimateClause.Holds holds) {
            return holds.of().text();
        } else if (clause instanceof EstimateClause.Bound bound) {
            return List.of(bound.least(), bound.when().stream().map(Name::text).toList());
        }
        return "";
    }

    /** A share that names the cut above as its base is the same as one that names none. */
    private List<TradeName> base(Clause.Figures figures) {
        return figures.figure().of().stream()
                .map(Name::text)
                .filter(base -> !base.equals(whole))
                .toList();
    }
}
