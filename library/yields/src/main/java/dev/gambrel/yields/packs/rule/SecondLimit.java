package dev.gambrel.yields.packs.rule;

/** Whether a rule knows packs that lack too much whatever the others weigh. */
public sealed interface SecondLimit {
    /**
     * None may be under T2.
     *
     * @param citation where it stands
     */
    record NoneUnder(Citation citation) implements SecondLimit {}

    /** The rule has one limit for each pack and no second. */
    record NotKnown() implements SecondLimit {}
}
