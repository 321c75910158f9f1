package dev.gambrel.tree.rules.choice;

import dev.gambrel.text.TradeName;
import dev.gambrel.tree.choice.Condition;
import dev.gambrel.tree.choice.Grade;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/** The values of a grade by their place in its order. */
record GradeScale(List<TradeName> values, Map<TradeName, Integer> places) {
    static GradeScale of(Grade grade) {
        Map<TradeName, Integer> places = new HashMap<>();
        for (TradeName value : grade.values()) {
            places.putIfAbsent(value, places.size());
        }
        return new GradeScale(grade.values(), places);
    }

    /** What conditions on this grade take; nothing where one names a value that the grade lacks, or lists twice. */
    Optional<Coverage> coverage(List<Conditioned> ways) {
        boolean known = places.size() == values.size()
                && ways.stream()
                        .allMatch(way -> places.keySet().containsAll(graded(way).named()));
        return known ? Optional.of(walk(ways)) : Optional.empty();
    }

    private Coverage walk(List<Conditioned> ways) {
        Walk<Integer> walk = new Walk<>((from, to) -> Coverage.words(values.subList(from, to)));
        for (Conditioned way : ways) {
            if (way.condition() instanceof Condition.GradeFrom from) {
                walk.take(way, places.get(from.first()), places.get(from.last()) + 1);
            } else {
                graded(way).named().stream().distinct().map(places::get).forEach(at -> walk.take(way, at, at + 1));
            }
        }
        return walk.between(0, values.size());
    }

    private static Condition.Graded graded(Conditioned way) {
        return (Condition.Graded) way.condition();
    }
}
