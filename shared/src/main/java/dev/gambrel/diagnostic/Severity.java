package dev.gambrel.diagnostic;

/** How much a finding matters. */
public enum Severity {
    /** The specification cannot be used until this is put right. */
    ERROR("error"),
    /** Something to look at; the specification can be used. */
    WARNING("warning"),
    /** Worth knowing; nothing is wrong. */
    NOTE("note");

    private final String word;

    Severity(String word) {
        this.word = word;
    }

    /**
     * The severity in print.
     *
     * @return "error", "warning" or "note"
     */
    public String word() {
        return word;
    }
}
