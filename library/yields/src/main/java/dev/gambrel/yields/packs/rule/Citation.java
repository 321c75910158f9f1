package dev.gambrel.yields.packs.rule;

/**
 * Where a figure stands.
 *
 * @param document the document and the place in it, in words
 * @param edition which edition or date of it was looked at; rules change
 * @param certainty how sure the figure is
 */
public record Citation(String document, String edition, Certainty certainty) {
    /**
     * Whether nothing should rest on it before it was looked up.
     *
     * @return true if it is recalled only
     */
    public boolean isFromMemory() {
        return certainty == Certainty.FROM_MEMORY;
    }

    @Override
    public String toString() {
        return document + ", " + edition + " (" + certainty.words() + ")";
    }
}
