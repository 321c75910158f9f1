package dev.gambrel.tree;

/**
 * What a specification is called, and how it came to hold.
 *
 * @param title the house's title
 * @param revision its number, from 1
 * @param standing what it replaces, from when it holds and why
 */
public record Specification(String title, int revision, Standing standing) {
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
