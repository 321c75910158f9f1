package dev.gambrel.yields.conformance.clause;

import dev.gambrel.diagnostic.Place;

/**
 * A clause, and where it is laid down.
 *
 * @param clause what is laid down
 * @param at where, in its own tree
 */
public record Stated(Clause clause, Place.InTree at) {}
