package dev.gambrel.tree.estimate;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Unit;
import dev.gambrel.text.TradeName;
import java.math.BigDecimal;
import java.util.List;
import java.util.Optional;

/** How a measurement is told. */
public sealed interface Scale {
    /**
     * As a figure with a unit. A reading in another unit of the same dimension is as good.
     *
     * @param unit the unit; {@link Unit#NUMBER} for a plain number
     */
    record In(Unit unit) implements Scale {}

    /**
     * As one of a few words, each of which stands for a number in an equation.
     *
     * @param scores the words with their numbers, in the order written
     */
    record Scored(List<Score> scores) implements Scale {
        /** Copies the list. */
        public Scored {
            scores = List.copyOf(scores);
        }

        /**
         * The score of a word.
         *
         * @param word any writing of it
         * @return the first score so called, if any
         */
        public Optional<Score> score(TradeName word) {
            return scores.stream().filter(score -> score.word().equals(word)).findFirst();
        }
    }

    /**
     * A word and its number: "thin" is 1.
     *
     * @param word the word
     * @param number what it counts as
     */
    record Score(TradeName word, BigDecimal number) {}

    /**
     * What a reading measures.
     *
     * @return the dimension; a score is a plain number
     */
    default Dimension dimension() {
        return this instanceof In in ? in.unit().dimension() : Dimension.NUMBER;
    }
}
