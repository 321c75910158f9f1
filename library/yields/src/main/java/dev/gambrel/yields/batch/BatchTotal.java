package dev.gambrel.yields.batch;

import dev.gambrel.tree.Stream;
import dev.gambrel.yields.Outcome;

/** Something that comes together over the whole carcass. */
public sealed interface BatchTotal {
    /**
     * What has one outcome. All outcomes together are the weight given.
     *
     * @param outcome what becomes of it
     */
    record OfOutcome(Outcome outcome) implements BatchTotal {
        @Override
        public String name() {
            return outcome.words();
        }
    }

    /** What is sold under its own name. */
    record Products() implements BatchTotal {
        @Override
        public String name() {
            return "products";
        }
    }

    /**
     * What comes together in one stream.
     *
     * @param stream the stream
     */
    record OfStream(Stream stream) implements BatchTotal {
        @Override
        public String name() {
            return "stream " + stream.name();
        }
    }

    /**
     * What to call it in print.
     *
     * @return for example "saleable", "products" or "stream mince"
     */
    String name();
}
