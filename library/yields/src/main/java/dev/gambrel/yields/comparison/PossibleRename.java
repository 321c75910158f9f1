package dev.gambrel.yields.comparison;

import dev.gambrel.diagnostic.Place;

/**
 * Something that is gone and something new that may be the same under another name. It is asked, never concluded: both stand
 * among the changes.
 *
 * @param gone where it was, in the earlier tree
 * @param was its name with its path
 * @param appeared where the new one is, in the later tree
 * @param is its name with its path
 * @param because what speaks for it, part of a sentence
 */
public record PossibleRename(Place.InTree gone, String was, Place.InTree appeared, String is, String because) {}
