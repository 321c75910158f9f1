package dev.gambrel.limits;

/**
 * How much of anything is read or built before the rest is refused with a finding. Every limit is inclusive.
 *
 * @param textBytes bytes of one file
 * @param nesting braces inside one another; JSON takes two brackets for each, and some around them
 * @param files files in one compilation, the first one counted
 * @param useDepth files that use files that use files
 * @param declarations statements in all files together
 * @param nodes parts in one cut tree
 * @param shown findings shown; the rest are counted
 */
public record Limits(int textBytes, int nesting, int files, int useDepth, int declarations, int nodes, int shown) {
    /** 1 MiB, 100 deep, 50 files 8 deep, 20,000 declarations, 50,000 nodes, 50 findings. */
    public static final Limits DEFAULT = new Limits(1 << 20, 100, 50, 8, 20_000, 50_000, 50);

    /**
     * Checks that each limit lets something through.
     *
     * @throws IllegalArgumentException if one is less than 1
     */
    public Limits {
        int least = Math.min(
                Math.min(Math.min(textBytes, nesting), Math.min(files, useDepth)),
                Math.min(Math.min(declarations, nodes), shown));
        if (least < 1) {
            throw new IllegalArgumentException("every limit is at least 1");
        }
    }
}
