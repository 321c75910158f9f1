package dev.gambrel.yields.conformance.number;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.references.ranges.Bounds;
import dev.gambrel.tree.anatomy.Reference;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.tree.portion.Outside;
import dev.gambrel.yields.conformance.clause.Clause;
import dev.gambrel.yields.conformance.clause.Quality;
import dev.gambrel.yields.conformance.clause.Stated;
import java.util.List;
import java.util.Optional;

/** The weights that a reference number asks for by naming a range of its scheme: "range B". */
public final class WeightRanges {
    private WeightRanges() {}

    /**
     * The limit on weight that a number names.
     *
     * @param number a clause with a reference number
     * @return a clause of its own, at the number's place; nothing where no range is named, the range is not held or only
     *     remembered, or editions print different ones and none is named
     */
    public static Optional<Stated> limit(Stated number) {
        return named(number)
                .flatMap(reference -> single(PublishedNumber.of(reference)
                        .ranged(reference.range())
                        .filter(ranged -> !ranged.table().citation().isFromMemory())
                        .map(ranged -> ranged.piece().bounds())
                        .distinct()
                        .toList()))
                .map(bounds -> new Stated(
                        new Clause.Limited(Quality.WEIGHT, of(bounds), new Outside.None(), Clause.How.NOT_SAID),
                        number.at()));
    }

    /**
     * What is told of a range that cannot be held against anything.
     *
     * @param number a clause with a reference number
     * @return a finding where a range is named and {@link #limit} gives none
     */
    public static Optional<Diagnostic> unknown(Stated number) {
        return named(number)
                .filter(reference -> limit(number).isEmpty())
                .map(reference -> Diagnostic.of(NumberCode.RANGE_NOT_HELD, number.at())
                        .with("range", reference.range())
                        .with("number", reference.scheme() + " " + reference.number())
                        .help("Write the weights themselves: weight between 600 g and 800 g"));
    }

    private static Optional<Reference> named(Stated number) {
        return number.clause() instanceof Clause.Numbered numbered
                        && !numbered.reference().range().isEmpty()
                ? Optional.of(numbered.reference())
                : Optional.empty();
    }

    private static Optional<Bounds> single(List<Bounds> held) {
        return held.size() == 1 ? Optional.of(held.get(0)) : Optional.empty();
    }

    private static Limit of(Bounds bounds) {
        if (bounds instanceof Bounds.Between between) {
            return new Limit.Between(between.from(), between.to());
        }
        return bounds instanceof Bounds.Up up
                ? new Limit.AtLeast(up.from())
                : new Limit.AtMost(((Bounds.Under) bounds).to());
    }
}
