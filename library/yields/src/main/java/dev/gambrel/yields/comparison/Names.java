package dev.gambrel.yields.comparison;

import dev.gambrel.yields.comparison.fact.Stated;
import dev.gambrel.yields.comparison.fact.Stated.Family;

/** What a thing is called where it is named alone. */
final class Names {
    private Names() {}

    static String of(Stated of) {
        return of.family() == Family.STREAM
                ? "stream " + of.name()
                : of.family() == Family.SPECIES ? "species" : of.path().toString();
    }
}
