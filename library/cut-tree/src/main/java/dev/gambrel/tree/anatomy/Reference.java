package dev.gambrel.tree.anatomy;

import dev.gambrel.text.TradeName;
import java.util.List;

/**
 * A cut's number in a published scheme.
 *
 * @param scheme who numbers: "UNECE"
 * @param number the number as printed, which may carry letters
 * @param edition the edition as printed, usually a year; empty where none was given
 * @param but in what the cut differs from what the scheme describes, in words; empty where it does not
 * @param range the weight range of the scheme, such as "B"; empty where none was given
 * @param rules what holds where the number and the words beside it differ
 * @param sources names of the sources where the number was seen
 */
public record Reference(
        TradeName scheme,
        String number,
        String edition,
        String but,
        String range,
        Rules rules,
        List<TradeName> sources) {
    /** What holds where a number and the words beside it differ. */
    public enum Rules {
        /** Nobody has said; then a difference is a conflict. */
        NOT_STATED(""),
        /** The words hold. */
        WORDS("words rule"),
        /** The number holds. */
        NUMBER("number rules");

        private final String words;

        Rules(String words) {
            this.words = words;
        }

        /**
         * In print.
         *
         * @return "words rule", "number rules", or nothing
         */
        public String words() {
            return words;
        }
    }

    /** Copies the list. */
    public Reference {
        sources = List.copyOf(sources);
    }

    /**
     * A number without a weight range, of which nobody says whether it or the words hold.
     *
     * @param scheme who numbers
     * @param number the number as printed
     * @param edition the edition as printed; empty where none was given
     * @param but in what the cut differs from what the scheme describes; empty where it does not
     * @param sources names of the sources where the number was seen
     */
    public Reference(TradeName scheme, String number, String edition, String but, List<TradeName> sources) {
        this(scheme, number, edition, but, "", Rules.NOT_STATED, sources);
    }

    /**
     * A number without a difference, and without a source beside it.
     *
     * @param scheme who numbers
     * @param number the number as printed
     * @param edition the edition as printed; empty where none was given
     */
    public Reference(TradeName scheme, String number, String edition) {
        this(scheme, number, edition, "", "", Rules.NOT_STATED, List.of());
    }
}
