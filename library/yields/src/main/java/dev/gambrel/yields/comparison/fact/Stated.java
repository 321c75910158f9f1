package dev.gambrel.yields.comparison.fact;

import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.TradeName;
import java.util.List;

/**
 * All that is stated of one thing: the carcass, a part, a portion, a stream.
 *
 * @param family things of one family have different names
 * @param name its name
 * @param path where it is, or what it belongs to
 * @param identity what kind of thing it is; of another kind, nothing further is held against it
 * @param facts what is said of it
 * @param below what stands in it
 * @param otherNames what else it is called
 */
public record Stated(
        Family family,
        TradeName name,
        TreePath path,
        Fact identity,
        List<Fact> facts,
        List<Stated> below,
        List<TradeName> otherNames) {
    /** Copies the lists. */
    public Stated {
        facts = List.copyOf(facts);
        below = List.copyOf(below);
        otherNames = List.copyOf(otherNames);
    }

    /** What has names of its own, and what it means when one is there no longer. */
    public enum Family {
        /** The carcass with all that stands at the top. */
        CARCASS(Loss.OF_WHAT_IS_RELIED_ON),
        /** The animal. */
        SPECIES(Loss.OF_WHAT_IS_RELIED_ON),
        /** A stream. */
        STREAM(Loss.OF_WHAT_IS_RELIED_ON),
        /** A cut, a way of working, bones. */
        PART(Loss.OF_WHAT_IS_RELIED_ON),
        /** Something that has to come off. */
        TRIM(Loss.OF_A_LIMIT),
        /** A loss or a rest. */
        WEIGHT(Loss.OF_A_FIGURE),
        /** A portion. */
        PORTION(Loss.OF_WHAT_IS_RELIED_ON);

        private final Loss loss;

        Family(Loss loss) {
            this.loss = loss;
        }

        /**
         * What is lost with it.
         *
         * @return the kind of loss
         */
        public Loss loss() {
            return loss;
        }

        /**
         * Trims and losses have their names among the parts.
         *
         * @return the families whose names may not be the same
         */
        public Family namespace() {
            return this == TRIM || this == WEIGHT ? PART : this;
        }
    }

    /** What is lost when a thing is there no longer. */
    public enum Loss {
        /** Something that another relies on. */
        OF_WHAT_IS_RELIED_ON,
        /** Something that was asked. */
        OF_A_LIMIT,
        /** Some weight. */
        OF_A_FIGURE
    }

    /**
     * Its own place.
     *
     * @return where it is declared
     */
    public Place.InTree place() {
        return new Place.InTree(path, identity.aspect(), identity.index());
    }

    /**
     * The place of a fact about it.
     *
     * @param fact one of its facts
     * @return where that is written
     */
    public Place.InTree place(Fact fact) {
        return new Place.InTree(path, fact.aspect(), fact.index());
    }

    /**
     * What takes up the difference when a share in it changes.
     *
     * @return the path of its rest, or its own where trimming leaves the cut itself; empty where the shares close by themselves
     */
    public List<TreePath> givesWay() {
        for (Stated part : below) {
            if (part.isRest()) {
                return List.of(part.path);
            }
        }
        boolean trimmed =
                family == Family.PART && below.stream().noneMatch(part -> part.family == Family.PART && !part.isBone());
        return trimmed ? List.of(path) : List.of();
    }

    /**
     * Whether it is what the parts beside it leave.
     *
     * @return true of a rest
     */
    public boolean isRest() {
        return identity.meaning().equals(PartFacts.REST);
    }

    private boolean isBone() {
        return identity.meaning().equals(PartFacts.BONE);
    }
}
