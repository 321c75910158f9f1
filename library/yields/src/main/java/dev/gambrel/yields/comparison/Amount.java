package dev.gambrel.yields.comparison;

import java.util.OptionalDouble;

/** How much one of two specifications gives. */
public sealed interface Amount {
    /**
     * A figure.
     *
     * @param value kilograms, or how many portions
     */
    record Of(double value) implements Amount {}

    /** The line is not there: nothing comes of it. */
    record NotThere() implements Amount {}

    /** The line is there, but no figure can be worked out. */
    record NotStated() implements Amount {}

    /**
     * The figure where there is one.
     *
     * @return the figure; 0 of what is not there; empty where none is stated
     */
    default OptionalDouble known() {
        if (this instanceof Of of) {
            return OptionalDouble.of(of.value());
        }
        return this instanceof NotThere ? OptionalDouble.of(0) : OptionalDouble.empty();
    }
}
