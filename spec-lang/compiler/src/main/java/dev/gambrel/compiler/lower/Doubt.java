package dev.gambrel.compiler.lower;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.inspection.EquationCode;
import java.util.HashSet;
import java.util.Set;

/** The paths where only a stand-in for something unreadable stands, so that no rule concludes from it. */
final class Doubt {
    private static final TradeName UNREADABLE_LINE = TradeName.of("unreadable line");

    private final Set<TreePath> paths = new HashSet<>();
    private boolean estimates;

    void about(TreePath path) {
        paths.add(path);
    }

    /** Something that leaves a cut could not be read, so that nothing can be said of all that leaves it. */
    void aboutSomethingIn(TreePath cut) {
        about(cut.then(UNREADABLE_LINE));
    }

    /** Of measures and estimates not all could be read. */
    void aboutEstimates() {
        estimates = true;
    }

    /** Whether a finding only follows from an estimate that could not be read. */
    boolean follows(Diagnostic finding) {
        return estimates && finding.code() instanceof EquationCode;
    }

    Set<TreePath> paths() {
        return Set.copyOf(paths);
    }
}
