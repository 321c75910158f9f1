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
     * One or more bones taken out and weighed together.
     *
     * @param name as written: "femur and patella"
     * @param bones each bone by name
     * @param share per cent of the cut above
     * @param home where they go
     */
    record Bone(TradeName name, List<TradeName> bones, Share share, Home home) implements Part {
        /** Copies the list. */
        public Bone {
            bones = List.copyOf(bones);
        }
    }

    /**
     * What comes off by a rule.
     *
     * @param name as written: "fat", "silverskin"
     * @param rule what is done
     * @param share per cent of the cut above; where it is not stated the weight stays in what is left
     * @param home where it goes
     */
    record Trim(TradeName name, TrimRule rule, Share share, Home home) implements Part {}

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
