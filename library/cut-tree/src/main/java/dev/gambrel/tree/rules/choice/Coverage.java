package dev.gambrel.tree.rules.choice;

import dev.gambrel.text.TradeName;
import dev.gambrel.tree.choice.Condition;
import dev.gambrel.tree.choice.Mark;
import dev.gambrel.tree.choice.WeightRange;
import java.util.List;
import java.util.Map;
import java.util.Optional;

/**
 * What conditions about one thing take between them.
 *
 * @param impossible ways whose condition is never so
 * @param overlaps what two ways take
 * @param gaps what no way takes, each in words after "is"
 */
record Coverage(List<Conditioned> impossible, List<Overlap> overlaps, List<String> gaps) {
    /**
     * Two ways at once.
     *
     * @param first the way written first
     * @param second the other
     * @param words what both take, after "is"
     */
    record Overlap(Conditioned first, Conditioned second, String words) {}

    /** The coverage; nothing where a grade, or a value of it, is not known. Costs O(n log n) of n ways. */
    static Optional<Coverage> of(List<Conditioned> ways, Map<TradeName, GradeScale> grades) {
        return ways.get(0).condition() instanceof Condition.Graded graded
                ? Optional.ofNullable(grades.get(graded.grade())).flatMap(grade -> grade.coverage(ways))
                : Optional.of(ofWeights(ways));
    }

    private static Coverage ofWeights(List<Conditioned> ways) {
        Walk<Mark> walk = new Walk<>((from, to) -> new WeightRange(from, to).toString());
        for (Conditioned way : ways) {
            WeightRange range = WeightRange.within(((Condition.Weighs) way.condition()).bounds());
            walk.take(way, range.from(), range.to());
        }
        return walk.between(Mark.START, Mark.END);
    }

    /** In words, values of a grade that follow one another. */
    static String words(List<TradeName> values) {
        return values.size() <= 3
                ? String.join(" or ", values.stream().map(TradeName::text).toList())
                : values.get(0) + " to " + values.get(values.size() - 1);
    }
}
