package dev.gambrel.tree;

import java.util.List;

/**
 * What a specification is called, how it came to hold, and which warnings the house accepts in it.
 *
 * @param title the house's title
 * @param revision its number, from 1
 * @param standing what it replaces, from when it holds and why
 * @param allowances warnings that are accepted, each with its reason
 */
public record Specification(String title, int revision, Standing standing, List<Allowance> allowances) {
    /** Copies the list. */
    public Specification {
        allowances = List.copyOf(allowances);
    }

    /**
     * A specification that accepts no warning.
     *
     * @param title the house's title
     * @param revision its number, from 1
     * @param standing what it replaces, from when it holds and why
     */
    public Specification(String title, int revision, Standing standing) {
        this(title, revision, standing, List.of());
    }

    /**
     * A specification of which nothing more is said.
     *
     * @param title the house's title
     * @param revision its number, from 1
     */
    public Specification(String title, int revision) {
        this(title, revision, Standing.NOT_STATED);
    }
}
