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
 * Parts that only go elsewhere because their stream was replaced by another.
 *
 * @param others the changes without those
 * @param renamed for the name of a stream that is gone, the new one that all of its parts go to
 */
record StreamRoutes(List<Change> others, Map<TradeName, Stated> renamed) {
    static StreamRoutes of(Walk walk) {
        Map<TradeName, Stated> gone = streams(walk.gone());
        Map<TradeName, Stated> appeared = streams(walk.appeared());
        Map<TradeName, Set<TradeName>> wentOver = new HashMap<>();
        for (Walk.Route route : walk.routes()) {
            wentOver.computeIfAbsent(route.from(), from -> new HashSet<>()).add(route.to());
        }
        Map<TradeName, Stated> renamed = new HashMap<>();
        wentOver.forEach((from, to) -> {
            TradeName only = to.iterator().next();
            if (to.size() == 1 && gone.containsKey(from) && appeared.containsKey(only)) {
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
