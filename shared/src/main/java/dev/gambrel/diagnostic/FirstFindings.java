package dev.gambrel.diagnostic;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.List;
import java.util.Set;
import java.util.function.Consumer;

/**
 * The first findings of many, in the order found. Not thread-safe.
 *
 * <p>Beyond {@value #MOST} no more are kept, since nobody reads them and a hostile file could make millions; but the first
 * error is kept however late it comes, so that a file with an error is never taken for one without.
 */
public final class FirstFindings implements Consumer<Diagnostic> {
    /** How many are kept. */
    public static final int MOST = 1_000;

    private final List<Diagnostic> kept = new ArrayList<>();
    private final Set<Severity> seen = EnumSet.noneOf(Severity.class);

    /** Nothing found yet. */
    public FirstFindings() {}

    @Override
    public void accept(Diagnostic finding) {
        boolean firstError = finding.severity() == Severity.ERROR && !seen.contains(Severity.ERROR);
        if (kept.size() < MOST || firstError) {
            kept.add(finding);
            seen.add(finding.severity());
        }
    }

    /**
     * What was kept.
     *
     * @return in the order found
     */
    public List<Diagnostic> list() {
        return List.copyOf(kept);
    }
}
