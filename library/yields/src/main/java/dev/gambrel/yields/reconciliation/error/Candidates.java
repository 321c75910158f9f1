package dev.gambrel.yields.reconciliation.error;

import dev.gambrel.yields.figure.Estimate;
import dev.gambrel.yields.reconciliation.BalanceGroups;
import dev.gambrel.yields.reconciliation.GlobalTest;
import dev.gambrel.yields.reconciliation.ReadingTest;
import dev.gambrel.yields.reconciliation.Reconciliation;
import java.util.ArrayList;
import java.util.List;

/** All that may be wrong with a sheet, each with what speaks for it. */
final class Candidates {
    private final Reconciliation sheet;
    private final GlobalTest now;
    private final BalanceGroups groups;
    private final List<List<Integer>> cuts;
    private final List<List<Integer>> alike;

    private Candidates(Reconciliation sheet) {
        this.sheet = sheet;
        this.now = sheet.test();
        this.groups = BalanceGroups.of(sheet);
        this.cuts = groups.cuts();
        this.alike = groups.readings();
    }

    /** In the order of the nodes. */
    static List<Suspect> of(Reconciliation sheet) {
        Candidates candidates = new Candidates(sheet);
        List<Suspect> all = new ArrayList<>();
        for (int v = 0; v < sheet.tree().size(); v++) {
            candidates.addBalance(v, all);
            candidates.addReading(v, all);
        }
        return all;
    }

    private void addBalance(int v, List<Suspect> all) {
        if (!cuts.get(v).isEmpty()) {
            Estimate missing = groups.missing(v);
            all.add(new Suspect.OneBalance(cuts.get(v), alike.get(v), missing, without(missing)));
        }
    }

    private void addReading(int v, List<Suspect> all) {
        if (groups.standsBetweenTwo(v) && sheet.reading(v) instanceof ReadingTest.Checked checked) {
            all.add(new Suspect.OneReading(v, checked.error(), without(checked.error())));
        }
    }

    private GlobalTest without(Estimate error) {
        double explained = error.mean() * error.mean() / error.spread().variance();
        return new GlobalTest(Math.max(0, now.chiSquare() - explained), now.degreesOfFreedom() - 1);
    }
}
