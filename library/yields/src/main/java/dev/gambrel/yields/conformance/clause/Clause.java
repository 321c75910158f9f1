package dev.gambrel.yields.conformance.clause;

import dev.gambrel.text.TradeName;
import dev.gambrel.tree.Landmark;
import dev.gambrel.tree.anatomy.Reference;
import dev.gambrel.tree.portion.Limit;
import dev.gambrel.tree.portion.Outside;

/** One thing that a text lays down; the smallest that is met or failed by itself. */
public sealed interface Clause {
    /**
     * What it is about.
     *
     * @return the quality
     */
    Quality quality();

    /**
     * What it lays down, in a few words.
     *
     * @return for example "at most 3 mm"
     */
    String words();

    /**
     * A figure within limits.
     *
     * @param quality what is limited
     * @param limit the limit
     * @param outside how many pieces may lie outside
     * @param how what else makes two such limits comparable: how lean is judged, where cold is taken, from when age runs
     */
    record Limited(Quality quality, Limit limit, Outside outside, How how) implements Clause {
        @Override
        public String words() {
            String some = outside instanceof Outside.OutOf ? ", " + outside : "";
            return limit + how.words(quality) + some;
        }
    }

    /**
     * How a limited figure is found. Limits that are found in different ways prove nothing of one another.
     *
     * @param by how it is judged or done, such as "visual" or "on the bone"; empty where nothing was said
     * @param from where it is taken or from when it runs, such as "kill"; empty where nothing was said
     */
    record How(String by, String from) {
        /** Nothing said. */
        public static final How NOT_SAID = new How("", "");

        String words(Quality quality) {
            String before = quality == Quality.AGE ? " from " : quality == Quality.TEMPERATURE ? " at the " : ", ";
            return (from.isEmpty() ? "" : before + from) + (by.isEmpty() ? "" : ", " + by);
        }
    }

    /**
     * One of several states.
     *
     * @param quality what is in that state
     * @param state the state, such as "boneless"
     */
    record State(Quality quality, String state) implements Clause {
        @Override
        public String words() {
            return state;
        }
    }

    /**
     * What becomes of a tissue.
     *
     * @param tissue "silverskin"
     * @param treatment "removed", "scored" or "left"
     */
    record Tissue(TradeName tissue, String treatment) implements Clause {
        @Override
        public Quality quality() {
            return Quality.TISSUE;
        }

        @Override
        public String words() {
            return tissue + " " + treatment;
        }
    }

    /**
     * Something that is carried with it by name: a claim, what a label tells, what is off the carcass.
     *
     * @param quality what kind of thing
     * @param name its name
     */
    record Carried(Quality quality, TradeName name) implements Clause {
        @Override
        public String words() {
            return name.text();
        }
    }

    /**
     * A pack.
     *
     * @param together how many pieces to one; 0 where nothing was said
     * @param container what they are packed in
     */
    record Packed(int together, TradeName container) implements Clause {
        @Override
        public Quality quality() {
            return Quality.PACK;
        }

        @Override
        public String words() {
            return together == 0 ? "in " + container : together + " to a " + container;
        }
    }

    /**
     * Where it is parted from its neighbours.
     *
     * @param landmark where
     */
    record Parted(Landmark landmark) implements Clause {
        @Override
        public Quality quality() {
            return Quality.PARTING;
        }

        @Override
        public String words() {
            return LandmarkWords.of(landmark);
        }
    }

    /**
     * A number in a published scheme.
     *
     * @param reference the number
     */
    record Numbered(Reference reference) implements Clause {
        @Override
        public Quality quality() {
            return Quality.NUMBER;
        }

        @Override
        public String words() {
            String edition = reference.edition().isEmpty() ? "" : " edition " + reference.edition();
            String range = reference.range().isEmpty() ? "" : ", range " + reference.range();
            String but = reference.but().isEmpty() ? "" : ", but " + reference.but();
            return reference.scheme() + " " + reference.number() + edition + range + but;
        }
    }
}
