package dev.gambrel.limits;

/**
 * How much of anything is read or built before the rest is refused with a finding. Every limit is inclusive.
 *
 * @param textBytes bytes of one file
 * @param nesting braces inside one another; JSON takes two brackets for each, and some around them
 * @param files files in one compilation, the first one counted
 * @param useDepth files that use files that use files
 * @param declarations statements in all files together
 * @param tree how large one tree may be
 * @param shown findings shown; the rest are counted
 */
public record Limits(int textBytes, int nesting, int files, int useDepth, int declarations, OfTree tree, int shown) {
    private static final int USUAL_STRUCTURES = 2_000;

    /** 1 MiB, 100 deep, 50 files 8 deep, 20,000 declarations, 50,000 nodes, 50 findings, 2,000 structures. */
    public static final Limits DEFAULT = new Limits(1 << 20, 100, 50, 8, 20_000, 50_000, 50);

    /**
     * How large one tree may be.
     *
     * @param nodes parts in one cut tree
     * @param structures pieces, bones, muscles, glands and published figures of one species
     */
    public record OfTree(int nodes, int structures) {}

    /**
     * Checks that each limit lets something through.
     *
     * @throws IllegalArgumentException if one is less than 1
     */
    public Limits {
        int least = Math.min(
                Math.min(Math.min(textBytes, nesting), Math.min(files, useDepth)),
                Math.min(Math.min(declarations, tree.nodes()), Math.min(shown, tree.structures())));
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
        this(textBytes, nesting, files, useDepth, declarations, new OfTree(nodes, USUAL_STRUCTURES), shown);
    }

    /**
     * Parts in one cut tree.
     *
     * @return how many are taken
     */
    public int nodes() {
        return tree.nodes();
    }

    /**
     * Pieces, bones, muscles, glands and published figures of one species.
     *
     * @return how many are taken
     */
    public int structures() {
        return tree.structures();
    }
}
