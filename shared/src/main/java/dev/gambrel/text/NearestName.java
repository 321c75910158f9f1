package dev.gambrel.text;

import java.util.Arrays;
import java.util.Collection;
import java.util.Iterator;
import java.util.Optional;

/**
 * Finds the known name that somebody most likely meant.
 *
 * <p>Distance is the number of letters to add, drop, change or swap with their neighbour (optimal string alignment, the
 * restricted form of Damerau, Communications of the ACM 7, 1964).
 */
public final class NearestName {
    /** Who errs in more letters than this does not mean that name. */
    private static final int MOST_LETTERS = 6;

    /** Nobody means one of more names than this; the rest are not looked at. */
    private static final int MOST_NAMES = 256;

    private NearestName() {}

    /**
     * The nearest of the known names, if it is near: at most a third of the letters differ, and at most 6.
     *
     * <p>Only the first 256 known names are looked at, and each costs O(letters), so that asking often of many names stays
     * cheap, whatever a file holds. Of two equally near names the earlier wins.
     *
     * @param wanted the name that is not known
     * @param known the names that are
     * @return the nearest one, or nothing when none is near
     */
    public static Optional<TradeName> of(TradeName wanted, Collection<TradeName> known) {
        String key = wanted.key();
        int allowed = Math.min(MOST_LETTERS, Math.max(1, key.length() / 3));
        TradeName best = null;
        Iterator<TradeName> names = known.iterator();
        for (int i = 0; i < MOST_NAMES && names.hasNext() && allowed >= 0; i++) {
            TradeName candidate = names.next();
            int distance = distance(key, candidate.key(), allowed);
            if (distance <= allowed) {
                best = candidate;
                allowed = distance - 1;
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

    /** The distance, or more than the most of interest. What both begin and end with costs nothing. */
    private static int distance(String a, String b, int most) {
        if (Math.abs(a.length() - b.length()) > most) {
            return most + 1;
        }
        int shorter = Math.min(a.length(), b.length());
        int start = 0;
        while (start < shorter && a.charAt(start) == b.charAt(start)) {
            start++;
        }
        int end = 0;
        while (end < shorter - start && a.charAt(a.length() - 1 - end) == b.charAt(b.length() - 1 - end)) {
            end++;
        }
        return distanceWithin(a.substring(start, a.length() - end), b.substring(start, b.length() - end), most);
    }

    /** Only cells that near the diagonal are worked out, and no further row once all of two rows are too far. */
    private static int distanceWithin(String a, String b, int most) {
        int[] before = new int[b.length() + 1];
        int[] last = new int[b.length() + 1];
        int[] now = new int[b.length() + 1];
        Arrays.setAll(last, j -> j);
        for (int i = 1; i <= a.length(); i++) {
            int from = Math.max(1, i - most);
            int to = Math.min(b.length(), i + most);
            now[from - 1] = from == 1 ? i : most + 1;
            for (int j = from; j <= to; j++) {
                now[j] = step(a, i, b, j, before, last, now);
            }
            if (to < b.length()) {
                now[to + 1] = most + 1;
            }
            if (least(now, from - 1, to) > most && least(last, from - 1, to) > most) {
                return most + 1;
            }
            int[] free = before;
            before = last;
            last = now;
            now = free;
        }
        return last[b.length()];
    }

    private static int least(int[] row, int from, int to) {
        int least = row[from];
        for (int j = from + 1; j <= to; j++) {
            least = Math.min(least, row[j]);
        }
        return least;
    }

    private static int step(String a, int i, String b, int j, int[] before, int[] last, int[] now) {
        int change = a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1;
        int least = Math.min(Math.min(last[j], now[j - 1]) + 1, last[j - 1] + change);
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(least, before[j - 2] + 1) : least;
    }
}
