package dev.gambrel.yields.comparison;

import dev.gambrel.text.TradeName;
import dev.gambrel.yields.comparison.fact.Fact;
import dev.gambrel.yields.comparison.fact.Meaning;
import dev.gambrel.yields.comparison.fact.Stated;
import dev.gambrel.yields.comparison.fact.Stated.Family;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Deque;
import java.util.HashMap;
import java.util.HashSet;
import java.util.IdentityHashMap;
import java.util.List;
import java.util.Map;
import java.util.Set;

/** Asks whether what is gone and what is new are one thing under two names. O(what is gone and new). */
final class Renames {
    private final Map<Object, Deque<Stated>> byReason = new HashMap<>();
    private final Set<Stated> taken = Collections.newSetFromMap(new IdentityHashMap<>());

    /**
     * Something that two things of one name would have in common.
     *
     * @param kind what they are
     * @param evidence what they have
     * @param because in words
     */
    private record Reason(Object kind, Object evidence, String because) {}

    private Renames(List<Stated> appeared) {
        for (Stated one : appeared) {
            reasons(one)
                    .forEach(reason -> byReason.computeIfAbsent(reason, r -> new ArrayDeque<>())
                            .add(one));
        }
    }

    static List<PossibleRename> among(List<Stated> gone, List<Stated> appeared, Map<TradeName, Stated> streams) {
        Renames renames = new Renames(appeared);
        List<PossibleRename> found = new ArrayList<>();
        for (Stated one : gone) {
            if (one.family() == Family.STREAM && streams.containsKey(one.name())) {
                found.add(asked(one, streams.get(one.name()), "all that went to the one goes to the other"));
            } else {
                renames.find(one, found);
            }
        }
        return found;
    }

    private static PossibleRename asked(Stated gone, Stated appeared, String because) {
        return new PossibleRename(gone.place(), Names.of(gone), appeared.place(), Names.of(appeared), because);
    }

    private void find(Stated gone, List<PossibleRename> found) {
        for (Reason reason : reasons(gone)) {
            Deque<Stated> open = byReason.getOrDefault(reason, new ArrayDeque<>());
            while (!open.isEmpty() && taken.contains(open.peek())) {
                open.pop();
            }
            if (!open.isEmpty()) {
                Stated other = open.pop();
                taken.add(other);
                found.add(asked(gone, other, reason.because()));
                return;
            }
        }
    }

    /** The strongest first. */
    private static List<Reason> reasons(Stated of) {
        Object kind = of.identity().meaning();
        List<Reason> reasons = new ArrayList<>();
        for (Fact fact : of.facts()) {
            if (fact.what().startsWith("number of ")) {
                reasons.add(new Reason(kind, fact.meaning(), "both have the same reference number"));
            }
        }
        Set<TradeName> names = new HashSet<>(of.otherNames());
        names.add(of.name());
        names.stream().sorted().forEach(name -> reasons.add(new Reason(kind, name, "both are called " + name.key())));
        if (of.family() != Family.STREAM) {
            shares(of)
                    .forEach(share -> reasons.add(new Reason(
                            kind,
                            List.of(of.path().parent(), share),
                            "both are the same share of what they are cut from")));
        }
        return reasons;
    }

    private static List<Meaning> shares(Stated of) {
        return of.facts().stream()
                .filter(fact -> fact.what().equals("share"))
                .map(Fact::meaning)
                .toList();
    }
}
