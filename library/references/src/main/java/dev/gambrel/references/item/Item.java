package dev.gambrel.references.item;

import dev.gambrel.references.source.Citation;

/**
 * What a published number means.
 *
 * @param scheme who gives the number
 * @param animal of which animal
 * @param numbers the number, or the run of numbers that have the name; of a run what tells its numbers apart is not held
 * @param name as printed
 * @param bone the bone state, where it is stated
 * @param definition the limits of the cut in short; empty where none is held
 * @param citation where it stands
 */
public record Item(
        Scheme scheme,
        Animal animal,
        Numbers numbers,
        String name,
        BoneState bone,
        String definition,
        Citation citation) {
    @Override
    public String toString() {
        return scheme.word() + " " + numbers + ", " + animal.word() + ", " + citation.edition();
    }
}
