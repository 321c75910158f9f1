package dev.gambrel.yields.testedcuts;

import java.util.List;

/** Why a test tells nothing of the shares of a cut. */
public sealed interface LeftOut {
    /**
     * Which test.
     *
     * @return its name
     */
    String test();

    /**
     * The weights of some parts do not follow from what was weighed.
     *
     * @param test the name of the test
     * @param parts what those parts are called; none where a cut has one part beside its losses
     * @param ofHowMany how many parts the cut has, losses that were not weighed left aside
     */
    record PartsNotKnown(String test, List<String> parts, int ofHowMany) implements LeftOut {
        /** Copies the list. */
        public PartsNotKnown {
            parts = List.copyOf(parts);
        }

        /**
         * Whether not one part is known: then the cut was simply not looked into.
         *
         * @return true if nothing was weighed of its parts
         */
        public boolean isAll() {
            return parts.size() >= ofHowMany;
        }
    }

    /**
     * A part weighed nothing: the cut was worked in another way there, or the part was too light for the scale.
     *
     * @param test the name of the test
     * @param part what the part is called
     * @param kilograms 0, or less where its weight is what others leave
     */
    record Nothing(String test, String part, double kilograms) implements LeftOut {}

    /**
     * The cut has other parts in this test than in the first.
     *
     * @param test the name of the test
     */
    record OtherParts(String test) implements LeftOut {}
}
