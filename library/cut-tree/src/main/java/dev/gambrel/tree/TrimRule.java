package dev.gambrel.tree;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.text.TradeName;
import java.util.List;

/** What is taken off a cut. */
public sealed interface TrimRule {
    /**
     * Fat taken down to a cover.
     *
     * @param limits each limit is a rule of its own; empty where none was written
     * @param finish how the cover is left and measured
     */
    record FatCover(List<FatLimit> limits, FatFinish finish) implements TrimRule {
        /** Copies the list. */
        public FatCover {
            limits = List.copyOf(limits);
        }

        /**
         * Limits and nothing more.
         *
         * @param limits each limit is a rule of its own
         */
        public FatCover(List<FatLimit> limits) {
            this(limits, FatFinish.NONE);
        }
    }

    /**
     * How a fat cover is left and measured.
     *
     * @param planed whether it is measured over hollows as if they were filled level: what stands above is planed off
     * @param practicallyFree whether next to no fat is left on
     * @param measured where it is measured, in words; empty where nothing was said
     */
    record FatFinish(boolean planed, boolean practicallyFree, String measured) {
        /** Nothing said. */
        public static final FatFinish NONE = new FatFinish(false, false, "");
    }

    /**
     * One limit on the fat left on; the limit itself is allowed.
     *
     * @param atMost a length
     * @param where how the cover is judged
     */
    record FatLimit(Quantity atMost, Where where) {
        /**
         * Checks the dimension.
         *
         * @throws IllegalArgumentException if the limit is no length
         */
        public FatLimit {
            atMost.measuring(Dimension.LENGTH);
        }
    }

    /** How a fat cover is judged. The two are independent: neither follows from the other. */
    enum Where {
        /** Nowhere thicker. */
        AT_ANY_POINT("at any point"),
        /** Over the whole cover. */
        ON_AVERAGE("on average");

        private final String words;

        Where(String words) {
            this.words = words;
        }

        /**
         * In print.
         *
         * @return "at any point" or "on average"
         */
        public String words() {
            return words;
        }
    }

    /**
     * A tissue taken off: silverskin, membrane, sinew, blood.
     *
     * @param tissue as written
     */
    record Removal(TradeName tissue) implements TrimRule {}

    /**
     * A lymph node or other gland taken out.
     *
     * @param gland its name in the species
     */
    record GlandRemoval(TradeName gland) implements TrimRule {}

    /** Ends and edges cut straight, so that what is left portions evenly. */
    record SquareOff() implements TrimRule {}
}
