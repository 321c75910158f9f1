package dev.gambrel.yields.comparison.fact;

import dev.gambrel.diagnostic.Aspect;
import dev.gambrel.quantity.Quantity;
import java.util.List;

/**
 * One thing that a specification says of one part.
 *
 * @param what what it is about, in a few words: "fat cover at any point". Facts about the same thing are held against each
 *     other
 * @param aspect where it is written
 * @param index which one of that aspect, counted from 0
 * @param meaning what it means
 * @param words what is written, for people
 * @param quantities the figures in it, as written
 */
public record Fact(String what, Aspect aspect, int index, Meaning meaning, String words, List<Quantity> quantities) {
    /** Copies the list. */
    public Fact {
        quantities = List.copyOf(quantities);
    }
}
