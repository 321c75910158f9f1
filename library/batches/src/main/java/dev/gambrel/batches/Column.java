package dev.gambrel.batches;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import java.math.BigDecimal;
import java.util.List;

/**
 * A column that is read.
 *
 * @param at where it stands
 * @param name what heads it
 * @param kind what it holds
 */
record Column(int at, String name, Kind kind) {
    /** What a column holds. */
    sealed interface Kind {
        /**
         * Figures.
         *
         * @param dimension what is measured
         * @param headed the unit of the heading; empty where it says none
         */
        record Figures(Dimension dimension, List<Unit> headed) implements Kind {}

        /**
         * One of a few words.
         *
         * @param words the words
         */
        record Words(List<TradeName> words) implements Kind {}

        /**
         * One of a few words, or the number that it stands for.
         *
         * @param words the words
         * @param numbers their numbers
         */
        record Scores(List<TradeName> words, List<BigDecimal> numbers) implements Kind {}
    }

    /** What is wanted, in a sentence. */
    String wanted() {
        if (kind instanceof Kind.Figures figures) {
            return figures.dimension() == Dimension.NUMBER
                    ? "a plain number"
                    : figures.dimension().words();
        }
        List<TradeName> words = kind instanceof Kind.Words plain ? plain.words() : ((Kind.Scores) kind).words();
        return String.join(", ", words.stream().map(TradeName::text).toList());
    }
}
