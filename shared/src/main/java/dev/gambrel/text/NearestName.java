package dev.gambrel.text;

import java.util.Collection;
import java.util.Optional;

/**
 * Finds the known name that somebody most likely meant.
 *
 * <p>Distance is the number of letters to add, drop, change or swap with their neighbour (optimal string alignment, the
 * restricted form of Damerau, Communications of the ACM 7, 1964).
 */
public final class NearestName {
    private NearestName() {}

    /**
     * The nearest of the known names, if it is near: at most a third of the letters differ.
     *
     * <p>Costs O(known names × letters squared). Of two equally near names the earlier wins.
     *
     * @param wanted the name that is not known
     * @param known the names that are
     * @return the nearest one, or nothing when none is near
     */
    public static Optional<TradeName> of(TradeName wanted, Collection<TradeName> known) {
        String key = wanted.key();
        int allowed = Math.max(1, key.length() / 3);
        TradeName best = null;
        int bestDistance = allowed + 1;
        for (TradeName candidate : known) {
            if (Math.abs(candidate.key().length() - key.length()) < bestDistance) {
                int distance = distance(key, candidate.key());
                if (distance < bestDistance) {
                    best = candidate;
                    bestDistance = distance;
                }
            }
        }
        return Optional.ofNullable(best);
    }

    /**
     * The nearest of the known names to any text, if it is near.
     *
     * @param wanted a text that may be no name at all
     * @param known the names that are known
     * @return the nearest one, or nothing when none is near
     */
    public static Optional<TradeName> of(String wanted, Collection<TradeName> known) {
        return TradeName.isAcceptable(wanted) ? of(TradeName.of(wanted), known) : Optional.empty();
    }

    private static int distance(String a, String b) {
        int[] before = new int[b.length() + 1];
        int[] last = new int[b.length() + 1];
        int[] now = new int[b.length() + 1];
        for (int j = 0; j <= b.length(); j++) {
            last[j] = j;
        }
        for (int i = 1; i <= a.length(); i++) {
            now[0] = i;
            for (int j = 1; j <= b.length(); j++) {
                int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
                now[j] = Math.min(Math.min(last[j], now[j - 1]) + 1, last[j - 1] + change);
                boolean swapped =
                        i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
                if (swapped) {
                    now[j] = Math.min(now[j], before[j - 2] + 1);
                }
            }
            int[] free = before;
            before = last;
            last = now;
            now = free;
        }
        return last[b.length()];
    }
}
