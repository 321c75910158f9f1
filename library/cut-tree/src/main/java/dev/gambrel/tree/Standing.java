package dev.gambrel.tree;

import java.time.LocalDate;

/**
 * How a revision of a specification came to hold.
 *
 * @param replaces the number of the revision that it replaces, from 1; 0 where that is not stated
 * @param from the day from which it is in force
 * @param because why it was made; empty where that is not stated
 */
public record Standing(int replaces, From from, String because) {
    /** Nothing was said. */
    public static final Standing NOT_STATED = new Standing(0, new From.NotStated(), "");

    /** The day from which a specification is in force. */
    public sealed interface From {
        /**
         * A day.
         *
         * @param day the first day on which it holds
         */
        record Day(LocalDate day) implements From {}

        /** Nobody has said. */
        record NotStated() implements From {}
    }
}
