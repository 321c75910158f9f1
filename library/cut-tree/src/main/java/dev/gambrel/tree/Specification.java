package dev.gambrel.tree;

import java.util.List;

/**
 * What a specification is called, and which warnings the house accepts in it.
 *
 * @param title the house's title
 * @param revision its number, from 1
 * @param allowances warnings that are accepted, each with its reason
 */
public record Specification(String title, int revision, List<Allowance> allowances) {
    /** Copies the list. */
    public Specification {
        allowances = List.copyOf(allowances);
    }

    /**
     * One that accepts no warning.
     *
     * @param title the house's title
     * @param revision its number, from 1
     */
    public Specification(String title, int revision) {
        this(title, revision, List.of());
    }
}
