package dev.gambrel.compiler.syntax;

import dev.gambrel.text.Span;
import java.util.List;

/** Where a cut is made, as written. */
public sealed interface WrittenLandmark {
    /**
     * Between two points.
     *
     * @param first one
     * @param second the other
     */
    record Between(Point first, Point second) implements WrittenLandmark {}

    /**
     * At a named place.
     *
     * @param place the place
     */
    record At(Name place) implements WrittenLandmark {}

    /**
     * Along a named line.
     *
     * @param line the line
     */
    record Along(Name line) implements WrittenLandmark {}

    /**
     * Parallel to a named line.
     *
     * @param line the line
     */
    record Parallel(Name line) implements WrittenLandmark {}

    /**
     * At one distance or more.
     *
     * @param distances each distance
     */
    record Distances(List<Distance> distances) implements WrittenLandmark {
        /** Copies the list. */
        public Distances {
            distances = List.copyOf(distances);
        }
    }

    /**
     * A distance.
     *
     * @param limit the word after "at" where it is a limit: none or one
     * @param amount the distance
     * @param from what it is measured from
     * @param at at which end; empty where none is named
     */
    record Distance(List<Name> limit, Amount amount, Name from, String at) {
        /** Copies the list. */
        public Distance {
            limit = List.copyOf(limit);
        }
    }

    /**
     * In free words.
     *
     * @param words the words
     */
    record InWords(String words) implements WrittenLandmark {}

    /**
     * A point of the skeleton.
     *
     * @param region the spine's region as written, or "rib"
     * @param which the number as written, or "first" or "last"
     * @param span the place
     */
    record Point(String region, String which, Span span) {}
}
