package dev.gambrel.references.source;

/**
 * Where something stands.
 *
 * @param document the document, in words
 * @param edition which edition of it, such as "2007"; what is not known is said in words
 * @param certainty how sure it is
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
