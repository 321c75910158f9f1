package dev.gambrel.tree;

import dev.gambrel.tree.term.Term;
import java.util.List;

/**
 * What a specification is called, how it came to hold, which warnings are accepted in it, and who speaks.
 *
 * @param title its title
 * @param revision its number, from 1
 * @param standing what it replaces, from when it holds and why
 * @param allowances warnings that are accepted, each with its reason
 * @param side who speaks
 * @param terms what is undertaken of everything, or required: cold, age, pack, claims
 */
public record Specification(
        String title, int revision, Standing standing, List<Allowance> allowances, Side side, List<Term> terms) {
    /** Copies the list. */
    public Specification {
        allowances = List.copyOf(allowances);
        terms = List.copyOf(terms);
    }

    /**
     * A house's specification without terms that hold for everything.
     *
     * @param title the house's title
     * @param revision its number, from 1
     * @param standing what it replaces, from when it holds and why
     * @param allowances warnings that are accepted, each with its reason
     */
    public Specification(String title, int revision, Standing standing, List<Allowance> allowances) {
        this(title, revision, standing, allowances, Side.HOUSE, List.of());
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
