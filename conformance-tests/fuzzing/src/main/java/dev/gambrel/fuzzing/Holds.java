package dev.gambrel.fuzzing;

import java.util.function.Supplier;

/** Says what does not hold. */
final class Holds {
    private Holds() {}

    static void isTrue(boolean fact, Supplier<String> otherwise) {
        if (!fact) {
            throw new AssertionError(otherwise.get());
        }
    }

    static void isSame(Object one, Object other, String what) {
        if (!one.equals(other)) {
            throw new AssertionError(what + " differs:\n" + one + "\n" + other);
        }
    }
}
