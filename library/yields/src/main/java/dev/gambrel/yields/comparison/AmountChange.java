package dev.gambrel.yields.comparison;

import java.util.OptionalDouble;

/**
 * What two specifications give of one line.
 *
 * @param name what it is: the path of a product or a portion, the name of a stream, an outcome
 * @param before by the earlier one
 * @param after by the later one
 */
public record AmountChange(String name, Amount before, Amount after) {
    /**
     * How much more the later one gives.
     *
     * @return the difference, or nothing where one of both is not stated
     */
    public OptionalDouble difference() {
        OptionalDouble was = before.known();
        OptionalDouble is = after.known();
        return was.isPresent() && is.isPresent()
                ? OptionalDouble.of(is.getAsDouble() - was.getAsDouble())
                : OptionalDouble.empty();
    }
}
