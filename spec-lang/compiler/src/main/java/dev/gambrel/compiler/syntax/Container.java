package dev.gambrel.compiler.syntax;

/** What a statement stands in. */
public enum Container {
    /** The file itself. */
    FILE("at the top of a file"),
    /** The braces of a cut. */
    CUT("in the braces of a cut"),
    /** The braces of a species. */
    SPECIES("in the braces of a species"),
    /** The braces of a piece of a species. */
    PIECE("in the braces of a piece");

    private final String where;

    Container(String where) {
        this.where = where;
    }

    /**
     * In a sentence.
     *
     * @return where a line stands
     */
    public String where() {
        return where;
    }
}
