package dev.gambrel.tree.rules.choice;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.function.BiFunction;
import java.util.function.BinaryOperator;

/** Walks along a scale past the stretches that ways take of it, from the lowest up. */
final class Walk<T extends Comparable<T>> {
    private record Stretch<T>(Conditioned way, int order, T from, T to) {}

    private final BiFunction<T, T, String> words;
    private final List<Stretch<T>> stretches = new ArrayList<>();
    private final List<Conditioned> impossible = new ArrayList<>();

    /** A scale on which a stretch is put into words. */
    Walk(BiFunction<T, T, String> words) {
        this.words = words;
    }

    /** A way takes all from one place up to another. */
    void take(Conditioned way, T from, T to) {
        if (from.compareTo(to) < 0) {
            stretches.add(new Stretch<>(way, stretches.size(), from, to));
        } else {
            impossible.add(way);
        }
    }

    /** What was taken of the scale. */
    Coverage between(T start, T end) {
        stretches.sort(Comparator.comparing(Stretch::from));
        List<Coverage.Overlap> overlaps = new ArrayList<>();
        List<String> gaps = new ArrayList<>();
        T reached = start;
        List<Stretch<T>> furthest = new ArrayList<>(1);
        for (Stretch<T> next : stretches) {
            if (next.from().compareTo(reached) < 0) {
                overlaps.add(overlap(furthest.get(0), next));
            } else {
                addGap(reached, next.from(), gaps);
            }
            if (next.to().compareTo(reached) > 0) {
                reached = next.to();
                furthest.clear();
                furthest.add(next);
            }
        }
        addGap(reached, end, gaps);
        return new Coverage(impossible, overlaps, gaps);
    }

    private Coverage.Overlap overlap(Stretch<T> one, Stretch<T> other) {
        boolean inOrder = one.order() < other.order();
        T to = BinaryOperator.<T>minBy(Comparator.naturalOrder()).apply(one.to(), other.to());
        return new Coverage.Overlap(
                (inOrder ? one : other).way(), (inOrder ? other : one).way(), words.apply(other.from(), to));
    }

    private void addGap(T from, T to, List<String> gaps) {
        if (from.compareTo(to) < 0) {
            gaps.add(words.apply(from, to));
        }
    }
}
