package dev.gambrel.tree;

import dev.gambrel.text.TradeName;

/**
 * What a figure rests on.
 *
 * @param name a short name by which figures cite it
 * @param kind how sure it is
 * @param citation enough to find it again, in words
 */
public record Source(TradeName name, Kind kind, String citation) {
    /** How sure a source is. */
    public enum Kind {
        /** In print, with a citation. */
        PUBLISHED("published"),
        /** Weighed by the house. */
        MEASURED("measured"),
        /** Everybody in the trade uses it; no source is known. */
        COMMON_PRACTICE("common practice"),
        /** Somebody's judgement. */
        JUDGEMENT("judgement"),
        /** Recalled and not found again: never checked against. */
        MEMORY("memory");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /**
         * In print.
         *
         * @return for example "published"
         */
        public String words() {
            return words;
        }
    }
}
