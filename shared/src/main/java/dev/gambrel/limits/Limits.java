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
 * @param structures pieces, bones, muscles, glands and published figures of one species
 */
public record Limits(
        int textBytes, int nesting, int files, int useDepth, int declarations, int nodes, int shown, int structures) {
    private static final int USUAL_STRUCTURES = 2_000;

    /** 1 MiB, 100 deep, 50 files 8 deep, 20,000 declarations, 50,000 nodes, 50 findings, 2,000 structures. */
    public static final Limits DEFAULT = new Limits(1 << 20, 100, 50, 8, 20_000, 50_000, 50);

    /**
     * Checks that each limit lets something through.
     *
     * @throws IllegalArgumentException if one is less than 1
     */
    public Limits {
        int least = Math.min(
                Math.min(Math.min(textBytes, nesting), Math.min(files, useDepth)),
                Math.min(Math.min(declarations, nodes), Math.min(shown, structures)));
        if (least < 1) {
            throw new IllegalArgumentException("every limit is at least 1");
        }
    }

    /**
     * Limits with the usual 2,000 structures of a species.
     *
     * @param textBytes bytes of one file
     * @param nesting braces inside one another
     * @param files files in one compilation
     * @param useDepth files that use files that use files
     * @param declarations statements in all files together
     * @param nodes parts in one cut tree
     * @param shown findings shown
     * @throws IllegalArgumentException if one is less than 1
     */
    public Limits(int textBytes, int nesting, int files, int useDepth, int declarations, int nodes, int shown) {
        this(textBytes, nesting, files, useDepth, declarations, nodes, shown, USUAL_STRUCTURES);
    }
}
