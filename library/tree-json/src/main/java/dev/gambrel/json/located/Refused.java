package dev.gambrel.json.located;

import dev.gambrel.diagnostic.Diagnostic;

/** Reading cannot go on. */
public final class Refused extends Exception {
    private static final long serialVersionUID = 1;

    private final transient Diagnostic finding;

    Refused(Diagnostic finding) {
        super(finding.code().id(), null, false, false);
        this.finding = finding;
    }

    /**
     * Why not.
     *
     * @return the finding
     */
    public Diagnostic finding() {
        return finding;
    }
}
