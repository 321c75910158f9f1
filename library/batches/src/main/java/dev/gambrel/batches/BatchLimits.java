package dev.gambrel.batches;

/**
 * How much of a file of carcasses is held at once. Every limit is inclusive.
 *
 * @param rowCharacters characters of one row; a longer one is refused
 * @param columns cells of one row; a heading with more is refused
 * @param rowsTogether rows that are worked out together, rounded up to whole blocks of {@link
 *     dev.gambrel.yields.batch.BatchWorker#BLOCK}, and fewer where they are long or give
 *     much; no result depends on it
 * @param shown refusals, and warnings, told in full of each kind; the rest are counted
 */
public record BatchLimits(int rowCharacters, int columns, int rowsTogether, int shown) {
    /** 4,096 characters, 256 columns, 1,024 rows together, 3 of each kind shown. */
    public static final BatchLimits DEFAULT = new BatchLimits(4096, 256, 1024, 3);

    /**
     * Checks that each limit lets something through.
     *
     * @throws IllegalArgumentException if one is less than 1
     */
    public BatchLimits {
        if (Math.min(Math.min(rowCharacters, columns), Math.min(rowsTogether, shown)) < 1) {
            throw new IllegalArgumentException("every limit is at least 1");
        }
    }
}
