package dev.gambrel.yields.reconciliation.pattern;

import dev.gambrel.yields.reconciliation.GlobalTest;
import dev.gambrel.yields.reconciliation.Reconciliation;
import dev.gambrel.yields.reconciliation.Shift;
import dev.gambrel.yields.reconciliation.error.Sidak;
import java.util.Comparator;
import java.util.List;
import java.util.Optional;

/** Holds patterns against a sheet and ranks those that it speaks for. */
public final class Explanations {
    /** Further from its known size than this, in standard deviations, a pattern is not what happened. */
    private static final double FITS = 3;

    private Explanations() {}

    /**
     * A pattern put to a sheet.
     *
     * @param pattern the mistake
     * @param shift how it would move the readings
     */
    public record Proposed(Pattern pattern, Shift shift) {}

    /**
     * The patterns that a sheet speaks for: of a size that chance would not bring, all patterns taken together, and of the size that they ask
     * for where they ask for one. O(nodes) for each pattern.
     *
     * @param sheet in balance
     * @param proposed what may have happened
     * @param level the chance that any is named on a sheet where nothing is wrong, such as 0.05
     * @return the one that explains most first; equals in the order proposed
     */
    public static List<Explanation> of(Reconciliation sheet, List<Proposed> proposed, double level) {
        double critical = Sidak.critical(Math.max(1, proposed.size()), level);
        GlobalTest now = sheet.test();
        return proposed.stream()
                .flatMap(p -> explanation(sheet, now, p).stream())
                .filter(e -> Math.abs(e.z()) > critical && Math.abs(e.misfit()) <= FITS)
                .sorted(Comparator.comparingDouble(Explanation::merit).reversed())
                .toList();
    }

    private static Optional<Explanation> explanation(Reconciliation sheet, GlobalTest now, Proposed proposed) {
        return proposed.shift().size(sheet).map(size -> {
            boolean isKnown = proposed.pattern().isOfKnownSize();
            double explained = new Explanation(proposed.pattern(), size, now).explained();
            return new Explanation(
                    proposed.pattern(),
                    size,
                    new GlobalTest(
                            Math.max(0, now.chiSquare() - explained), now.degreesOfFreedom() - (isKnown ? 0 : 1)));
        });
    }
}
