package dev.gambrel.compiler.syntax;

import dev.gambrel.text.Span;

/** Something that is said of one revision following another. */
public sealed interface RevisionClause extends Clause.OfOneKindOfLine {
    /**
     * Which part of the same cut gains what this one loses, or loses what it gains.
     *
     * @param part the part's name, or "rest"
     * @param span the place
     */
    record Difference(Name part, Span span) implements RevisionClause {}

    /**
     * The revision that a specification replaces.
     *
     * @param number as written
     * @param span the place
     */
    record Replaces(String number, Span span) implements RevisionClause {}

    /**
     * The day from which a specification holds.
     *
     * @param date as written, its parts single-spaced: "2026-10-01" or "1 October 2026"
     * @param span the place
     */
    record InForce(String date, Span span) implements RevisionClause {}

    /**
     * Why a revision was made.
     *
     * @param words the words
     * @param span the place
     */
    record Because(String words, Span span) implements RevisionClause {}
}
