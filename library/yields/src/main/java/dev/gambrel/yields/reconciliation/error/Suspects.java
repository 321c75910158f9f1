package dev.gambrel.yields.reconciliation.error;

import dev.gambrel.yields.reconciliation.Readings;
import dev.gambrel.yields.reconciliation.Reconciliation;
import java.util.ArrayList;
import java.util.List;

/**
 * What is wrong on a sheet, the most glaring first, each found after those before it were left out (serial elimination: R. W. Serth and W. A.
 * Heenan, "Gross error detection and data reconciliation in steam-metering systems", AIChE Journal 32, 1986).
 *
 * @param found what may be wrong; none where all readings agree
 * @param critical what the next would have had to exceed, in standard deviations; infinite where nothing is left to check
 * @param rest the sheet in balance without what was found
 * @param isComplete false if so much is wrong that the search was ended: then the sheet as a whole is in doubt
 */
public record Suspects(List<Suspect> found, double critical, Reconciliation rest, boolean isComplete) {
    /** How many wrong readings are looked for at most. */
    public static final int MOST = 20;

    /** Copies the list. */
    public Suspects {
        found = List.copyOf(found);
    }

    /**
     * Looks for what is wrong. O(nodes) for each that is found.
     *
     * @param sheet in balance
     * @param level the chance of a false alarm on a sheet where nothing is wrong, such as 0.05
     * @return what was found
     * @throws IllegalArgumentException if the level is not between 0 and 1
     */
    public static Suspects of(Reconciliation sheet, double level) {
        List<Suspect> found = new ArrayList<>();
        Reconciliation rest = sheet;
        while (true) {
            List<Suspect> candidates = Candidates.of(rest);
            double critical =
                    candidates.isEmpty() ? Double.POSITIVE_INFINITY : Sidak.critical(candidates.size(), level);
            List<Suspect> worst = candidates.stream()
                    .reduce((a, b) -> Math.abs(b.z()) > Math.abs(a.z()) ? b : a)
                    .filter(suspect -> Math.abs(suspect.z()) > critical)
                    .stream()
                    .toList();
            if (worst.isEmpty() || found.size() == MOST) {
                return new Suspects(found, critical, rest, worst.isEmpty());
            }
            found.add(worst.get(0));
            rest = without(rest, worst.get(0));
        }
    }

    private static Reconciliation without(Reconciliation sheet, Suspect suspect) {
        List<Integer> released = new ArrayList<>(sheet.released());
        Readings readings = sheet.readings();
        if (suspect instanceof Suspect.OneReading one) {
            readings = readings.without(one.node());
        } else if (suspect instanceof Suspect.OneBalance balance) {
            released.add(balance.cuts().get(0));
        }
        return Reconciliation.of(sheet.tree(), readings, released);
    }
}
