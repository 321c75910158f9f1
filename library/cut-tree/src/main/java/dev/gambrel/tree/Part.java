package dev.gambrel.tree;

import dev.gambrel.text.TradeName;
import java.util.List;

/** Something that leaves a cut: together the parts are all that entered it. */
public sealed interface Part permits Cut, Way, Part.Bone, Part.Trim, Part.Loss, Part.Rest {
    /**
     * The name, alone of its kind among the parts of one cut.
     *
     * @return the name
     */
    TradeName name();

    /**
     * How much of the cut above it is.
     *
     * @return the share; a rest has none of its own
     */
    Share share();

    /**
     * Where it goes.
     *
     * @return its home; of a loss, which goes nowhere, not stated
     */
    Home home();

    /**
     * What comes off before it. The order of work does not alter the tree.
     *
     * @return names of parts beside it; empty where nothing was said
     */
    default List<TradeName> after() {
        return List.of();
    }

    /**
     * One or more bones taken out and weighed together.
     *
     * @param name as written: "femur and patella"
     * @param bones each bone by name
     * @param share per cent of the cut above
     * @param home where they go
     * @param after what comes off before them
     */
    record Bone(TradeName name, List<TradeName> bones, Share share, Home home, List<TradeName> after) implements Part {
        /** Copies the lists. */
        public Bone {
            bones = List.copyOf(bones);
            after = List.copyOf(after);
        }

        /**
         * Bones of whose turn nothing is said.
         *
         * @param name as written: "femur and patella"
         * @param bones each bone by name
         * @param share per cent of the cut above
         * @param home where they go
         */
        public Bone(TradeName name, List<TradeName> bones, Share share, Home home) {
            this(name, bones, share, home, List.of());
        }
    }

    /**
     * What comes off by a rule.
     *
     * @param name as written: "fat", "silverskin"
     * @param rule what is done
     * @param share per cent of the cut above; where it is not stated the weight stays in what is left
     * @param home where it goes
     * @param after what comes off before it
     */
    record Trim(TradeName name, TrimRule rule, Share share, Home home, List<TradeName> after) implements Part {
        /** Copies the list. */
        public Trim {
            after = List.copyOf(after);
        }

        /**
         * A trim of whose turn nothing is said.
         *
         * @param name as written: "fat", "silverskin"
         * @param rule what is done
         * @param share per cent of the cut above
         * @param home where it goes
         */
        public Trim(TradeName name, TrimRule rule, Share share, Home home) {
            this(name, rule, share, home, List.of());
        }
    }

    /**
     * Weight that is gone: drip, saw dust, evaporation.
     *
     * @param name what the loss is called
     * @param share per cent of the cut above
     */
    record Loss(TradeName name, Share share) implements Part {
        @Override
        public Home home() {
            return new Home.NotStated();
        }
    }

    /**
     * What the other parts leave.
     *
     * @param home where it goes
     */
    record Rest(Home home) implements Part {
        /** The name of every rest. */
        public static final TradeName NAME = TradeName.of("rest");

        @Override
        public TradeName name() {
            return NAME;
        }

        @Override
        public Share share() {
            return new Share.NotStated();
        }
    }
}
