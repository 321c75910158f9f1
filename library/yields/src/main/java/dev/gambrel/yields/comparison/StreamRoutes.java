package dev.gambrel.yields.comparison;

import dev.gambrel.text.TradeName;
import dev.gambrel.yields.comparison.fact.Stated;
import dev.gambrel.yields.comparison.fact.Stated.Family;
import java.util.HashMap;
import java.util.HashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;

/**
 * Parts that only go elsewhere because their stream was replaced by another: all of the one go to the other, and no others do.
 *
 * @param others the changes without those
 * @param renamed for the name of a stream that is gone, the new one that its parts, and they alone, go to
 */
record StreamRoutes(List<Change> others, Map<TradeName, Stated> renamed) {
    static StreamRoutes of(Walk walk) {
        Map<TradeName, Stated> gone = streams(walk.gone());
        Map<TradeName, Stated> appeared = streams(walk.appeared());
        Map<TradeName, Set<TradeName>> wentTo = new HashMap<>();
        Map<TradeName, Set<TradeName>> cameFrom = new HashMap<>();
        for (Walk.Route route : walk.routes()) {
            wentTo.computeIfAbsent(route.from(), from -> new HashSet<>()).add(route.to());
            cameFrom.computeIfAbsent(route.to(), to -> new HashSet<>()).add(route.from());
        }
        Map<TradeName, Stated> renamed = new HashMap<>();
        wentTo.forEach((from, to) -> {
            TradeName only = to.iterator().next();
            boolean alone = to.size() == 1 && cameFrom.get(only).size() == 1;
            if (alone && gone.containsKey(from) && appeared.containsKey(only)) {
                renamed.put(from, appeared.get(only));
            }
        });
        Set<Change> following = walk.routes().stream()
                .filter(route -> renamed.containsKey(route.from()))
                .map(Walk.Route::change)
                .collect(Collectors.toSet());
        return new StreamRoutes(
                walk.changes().stream()
                        .filter(change -> !following.contains(change))
                        .toList(),
                renamed);
    }

    private static Map<TradeName, Stated> streams(List<Stated> among) {
        return among.stream()
                .filter(one -> one.family() == Family.STREAM)
                .collect(Collectors.toMap(Stated::name, one -> one, (first, second) -> first));
    }
}
