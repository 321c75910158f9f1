package dev.gambrel.yields.comparison;

import java.util.ArrayList;
import java.util.IdentityHashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/**
 * The things of two lists, brought together by a key, whatever their order.
 *
 * @param both those that are in both, in the order of the first list
 * @param gone those of the first list alone, in its order
 * @param appeared those of the second list alone, in its order
 * @param <T> what is paired
 */
record Pairs<T>(List<Pair<T>> both, List<T> gone, List<T> appeared) {
    /**
     * Two that belong together.
     *
     * @param before of the first list
     * @param after of the second
     * @param <T> what is paired
     */
    record Pair<T>(T before, T after) {}

    /** Pairs by key in O(length); of several with one key the first goes with the first. */
    static <T> Pairs<T> of(List<T> before, List<T> after, Function<T, Object> key) {
        Map<Object, List<T>> open = new LinkedHashMap<>();
        for (int i = after.size() - 1; i >= 0; i--) {
            open.computeIfAbsent(key.apply(after.get(i)), k -> new ArrayList<>(1))
                    .add(after.get(i));
        }
        List<Pair<T>> both = new ArrayList<>();
        List<T> gone = new ArrayList<>();
        Map<T, Boolean> taken = new IdentityHashMap<>();
        for (T one : before) {
            List<T> others = open.getOrDefault(key.apply(one), List.of());
            if (others.isEmpty()) {
                gone.add(one);
            } else {
                T other = others.remove(others.size() - 1);
                taken.put(other, true);
                both.add(new Pair<>(one, other));
            }
        }
        List<T> appeared = after.stream().filter(one -> !taken.containsKey(one)).toList();
        return new Pairs<>(both, gone, appeared);
    }
}
