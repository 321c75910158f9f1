package dev.gambrel.yields.control;

/** Whether the tests of a cut tell how all its shares together stray. */
public sealed interface HotellingAnswer permits HotellingLevel, HotellingAnswer.TooFew, HotellingAnswer.NeverVaries {
    /**
     * There are too few tests.
     *
     * @param tests how many there are
     * @param needed how many there should be: 8, or 1 more than the parts
     */
    record TooFew(int tests, int needed) implements HotellingAnswer {}

    /**
     * Some ratio of parts is the same in all tests, or as good as. Real weights stray: ask whether a weight was worked out of another.
     *
     * @param tests how many there are
     */
    record NeverVaries(int tests) implements HotellingAnswer {}
}
