package dev.gambrel.yields.portions;

import java.util.Arrays;
import java.util.List;

/** Numbers of portions counted out: each has its chance. What is left out at both ends is less likely than 1e-18. */
final class Listed implements NumberOfPortions {
    /** So many numbers are counted out at the most. */
    static final int MOST = 8192;
    /** What is less likely than this, together at one end, is left out. */
    private static final double NEVER = 1e-20;

    private final long fewest;
    private final double[] chances;
    private final double[] atLeast;
    private final double[] atMost;

    /** From a number on upward. */
    Listed(long fewest, double[] chances) {
        this.fewest = fewest;
        this.chances = chances;
        this.atLeast = new double[chances.length];
        this.atMost = new double[chances.length];
        double fromTop = 0;
        double fromBottom = 0;
        for (int i = 0; i < chances.length; i++) {
            int j = chances.length - 1 - i;
            atMost[i] = fromBottom += chances[i];
            atLeast[j] = fromTop += chances[j];
        }
    }

    static Listed exactly(long number) {
        return new Listed(number, new double[] {1});
    }

    @Override
    public double expected() {
        double above = 0;
        for (int i = 1; i < chances.length; i++) {
            above += atLeast[i];
        }
        return fewest + above;
    }

    @Override
    public double deviation() {
        double middle = expected() - fewest;
        double variance = 0;
        for (int i = 0; i < chances.length; i++) {
            variance += chances[i] * (i - middle) * (i - middle);
        }
        return Math.sqrt(variance);
    }

    @Override
    public long fewest() {
        return fewest;
    }

    @Override
    public long most() {
        return fewest + chances.length - 1;
    }

    @Override
    public double chanceOf(long number) {
        long i = number - fewest;
        return 0 <= i && i < chances.length ? chances[(int) i] : 0;
    }

    @Override
    public double chanceOfAtLeast(long number) {
        long i = number - fewest;
        return i <= 0 ? 1 : i < chances.length ? Math.min(1, atLeast[(int) i]) : 0;
    }

    @Override
    public double chanceOfAtMost(long number) {
        long i = number - fewest;
        return i < 0 ? 0 : i < chances.length - 1 ? Math.min(1, atMost[(int) i]) : 1;
    }

    @Override
    public long promised(double certainty) {
        Promise.check(certainty);
        int i = 0;
        while (i + 1 < chances.length && atLeast[i + 1] >= certainty) {
            i++;
        }
        return fewest + i;
    }

    int length() {
        return chances.length;
    }

    /** Together with what comes independently of it. */
    Listed plus(Listed other) {
        if (other.length() == 1) {
            return new Listed(fewest + other.fewest, chances);
        }
        double[] sum = new double[chances.length + other.chances.length - 1];
        for (int i = 0; i < chances.length; i++) {
            for (int j = 0; j < other.chances.length; j++) {
                sum[i + j] += chances[i] * other.chances[j];
            }
        }
        return new Listed(fewest + other.fewest, sum).withoutEnds();
    }

    /** From several pieces that vary independently; squares, so that it takes O(log pieces) sums. */
    Listed times(long pieces) {
        Listed total = exactly(0);
        Listed power = this;
        for (long left = pieces; left > 0; left >>= 1) {
            if ((left & 1) == 1) {
                total = total.plus(power);
            }
            power = left > 1 ? power.plus(power) : power;
        }
        return total;
    }

    /** From several pieces that are alike, so that each gives as many. */
    Listed alike(int pieces) {
        double[] spaced = new double[(chances.length - 1) * pieces + 1];
        for (int i = 0; i < chances.length; i++) {
            spaced[i * pieces] = chances[i];
        }
        return new Listed(fewest * pieces, spaced);
    }

    /** From the fewest to the most that any of several gives. */
    static long span(List<Listed> several) {
        return several.stream()
                        .mapToLong(each -> each.fewest + each.length())
                        .max()
                        .orElse(0)
                - first(several);
    }

    private static long first(List<Listed> several) {
        return several.stream().mapToLong(each -> each.fewest).min().orElse(0);
    }

    /** One of several, each with its chance. */
    static Listed oneOf(List<Listed> several, double[] chance) {
        long first = first(several);
        double[] mixed = new double[(int) span(several)];
        for (int s = 0; s < several.size(); s++) {
            Listed each = several.get(s);
            for (int i = 0; i < each.length(); i++) {
                mixed[(int) (each.fewest - first) + i] += chance[s] * each.chances[i];
            }
        }
        return new Listed(first, mixed);
    }

    private Listed withoutEnds() {
        int from = 0;
        int to = chances.length;
        while (to - from > 1 && atMost[from] < NEVER) {
            from++;
        }
        while (to - from > 1 && atLeast[to - 1] < NEVER) {
            to--;
        }
        boolean whole = from == 0 && to == chances.length;
        return whole ? this : new Listed(fewest + from, Arrays.copyOfRange(chances, from, to));
    }
}
