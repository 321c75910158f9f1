package dev.gambrel.compiler.syntax;

import dev.gambrel.text.Span;

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
