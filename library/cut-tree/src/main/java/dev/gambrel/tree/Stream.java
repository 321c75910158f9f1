package dev.gambrel.tree;

import dev.gambrel.quantity.Dimension;
import dev.gambrel.quantity.Quantity;
import dev.gambrel.text.TradeName;
import dev.gambrel.tree.term.Judged;
import java.util.List;

/**
 * A tub that trim, bones and rests go into.
 *
 * @param name the house's name
 * @param kind what becomes of it
 * @param lean how lean it is meant to be
 * @param onlyFrom the cuts that it may come from; empty where it may come from any
 */
public record Stream(TradeName name, Kind kind, Lean lean, List<TradeName> onlyFrom) {
    /** Copies the list. */
    public Stream {
        onlyFrom = List.copyOf(onlyFrom);
    }

    /**
     * A stream that may come from any cut.
     *
     * @param name the house's name
     * @param kind what becomes of it
     * @param lean how lean it is meant to be
     */
    public Stream(TradeName name, Kind kind, Lean lean) {
        this(name, kind, lean, List.of());
    }

    /** What becomes of a stream. */
    public enum Kind {
        /** Sold as meat. */
        SALEABLE("saleable"),
        /** Sold or used, not as meat: bones, fat to render. */
        BY_PRODUCT("by-product"),
        /** Thrown away. */
        WASTE("waste");

        private final String words;

        Kind(String words) {
            this.words = words;
        }

        /**
         * In print.
         *
         * @return "saleable", "by-product" or "waste"
         */
        public String words() {
            return words;
        }
    }

    /** How lean a stream is. */
    public sealed interface Lean {
        /**
         * A figure.
         *
         * @param percent per cent lean
         * @param judged how it is found: the two ways are never mixed
         */
        record Stated(Quantity percent, Judged judged) implements Lean {
            /**
             * Checks the dimension.
             *
             * @throws IllegalArgumentException if the figure is no share
             */
            public Stated {
                percent.measuring(Dimension.SHARE);
            }
        }

        /** Nothing was said. */
        record NotStated() implements Lean {}
    }
}
