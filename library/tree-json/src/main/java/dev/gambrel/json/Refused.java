package dev.gambrel.json;

import dev.gambrel.diagnostic.Diagnostic;

/** Reading cannot go on. It never leaves this package: the finding does. */
final class Refused extends Exception {
    private static final long serialVersionUID = 1;

    private final transient Diagnostic finding;

    Refused(Diagnostic finding) {
        super(finding.code().id(), null, false, false);
        this.finding = finding;
    }

    Diagnostic finding() {
        return finding;
    }
}
