package dev.gambrel.tree.rules.bench;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Part;
import dev.gambrel.tree.inspection.BenchCode;
import dev.gambrel.tree.inspection.Findings;
import dev.gambrel.tree.inspection.Inspection;
import dev.gambrel.tree.inspection.Rule;
import dev.gambrel.tree.inspection.Site;
import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.Deque;
import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Consumer;

/** What a part comes after lies beside it, and no part waits for itself by way of others. */
public final class OrderOfWork implements Rule {
    @Override
    public void check(Inspection inspection, Consumer<Diagnostic> found) {
        for (Site site : inspection.sites()) {
            if (site.parts().stream().anyMatch(part -> !part.after().isEmpty())) {
                check(site, found);
            }
        }
    }

    private static void check(Site site, Consumer<Diagnostic> found) {
        Map<TradeName, Part> beside = new LinkedHashMap<>();
        site.parts().forEach(part -> beside.putIfAbsent(part.name(), part));
        for (Part part : site.parts()) {
            for (int i = 0; i < part.after().size(); i++) {
                if (!beside.containsKey(part.after().get(i))) {
                    found.accept(unknown(site, part, i, beside));
                }
            }
        }
        List<TradeName> stuck = stuck(beside);
        if (!stuck.isEmpty()) {
            found.accept(goesRound(site, stuck));
        }
    }

    private static Diagnostic unknown(Site site, Part part, int index, Map<TradeName, Part> beside) {
        TradeName after = part.after().get(index);
        Place at = new Place.InTree(site.path().then(part.name()), Aspect.TURN, index);
        Diagnostic finding = Diagnostic.of(BenchCode.UNKNOWN_TURN, at)
                .with("part", part.name())
                .with("after", after)
                .with("cut", site.name());
        List<TradeName> others = beside.keySet().stream()
                .filter(name -> !name.equals(part.name()))
                .toList();
        return Findings.suggest(finding, after, others);
    }

    private static Diagnostic goesRound(Site site, List<TradeName> stuck) {
        Place at = new Place.InTree(site.path().then(stuck.get(0)), Aspect.TURN);
        Diagnostic finding = Diagnostic.of(BenchCode.TURNS_GO_ROUND, at)
                .with("cut", site.name())
                .with("parts", Findings.list(stuck));
        if (stuck.size() > 1) {
            finding = finding.related(new Place.InTree(site.path().then(stuck.get(1)), Aspect.TURN), "and this one");
        }
        return finding.help("Take one of them out of the round.");
    }

    /** Parts that wait for one another: what is left once whatever is free has come off, again and again. O(parts). */
    private static List<TradeName> stuck(Map<TradeName, Part> beside) {
        Map<TradeName, Integer> waits = new LinkedHashMap<>();
        Map<TradeName, List<TradeName>> waited = new HashMap<>();
        beside.forEach((name, part) -> {
            List<TradeName> known =
                    part.after().stream().filter(beside::containsKey).toList();
            waits.put(name, known.size());
            known.forEach(first ->
                    waited.computeIfAbsent(first, n -> new ArrayList<>(1)).add(name));
        });
        Deque<TradeName> free = new ArrayDeque<>();
        waits.forEach((name, count) -> {
            if (count == 0) {
                free.add(name);
            }
        });
        while (!free.isEmpty()) {
            TradeName done = free.remove();
            waits.remove(done);
            for (TradeName name : waited.getOrDefault(done, List.of())) {
                if (waits.merge(name, -1, Integer::sum) == 0) {
                    free.add(name);
                }
            }
        }
        return onlyThoseInARound(beside, waits);
    }

    /** Of those that are stuck, leaves out those that merely wait for a round. */
    private static List<TradeName> onlyThoseInARound(Map<TradeName, Part> beside, Map<TradeName, Integer> stuck) {
        if (stuck.isEmpty()) {
            return List.of();
        }
        List<TradeName> seen = new ArrayList<>();
        TradeName at = stuck.keySet().iterator().next();
        while (!seen.contains(at)) {
            seen.add(at);
            at = beside.get(at).after().stream()
                    .filter(stuck::containsKey)
                    .findFirst()
                    .orElseThrow();
        }
        return seen.subList(seen.indexOf(at), seen.size());
    }
}
