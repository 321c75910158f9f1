package dev.gambrel.tree.bench;

import dev.gambrel.text.TradeName;

/**
 * What is done with a tissue that is not taken off.
 *
 * @param kind scored or left
 * @param tissue "silverskin"
 * @param reason in words; empty where none was given
 */
public record Treatment(Kind kind, TradeName tissue, String reason) {
    /** What is done. */
    public enum Kind {
        /** Cut through in lines and left on. */
        SCORED("scored"),
        /** Left as it is. */
        LEFT("left");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /**
         * In print.
         *
         * @return "scored" or "left"
         */
        public String words() {
            return words;
        }
    }
}
