package dev.gambrel.blends;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Severity;

/** What can be found about a blend. */
public enum BlendCode implements Code {
    /** Two tubs, or a tub and the target, whose leans are not the same kind of figure. */
    LEAN_JUDGED_APART(
            "G1901",
            "lean-judged-apart",
            "The lean of {one} is {judged} and that of {other} is {otherwise}; lean by eye and lean by analysis are not the"
                    + " same figure, and cannot be blended as one."),
    /** No blend of what is there is as lean, or as fat, as is wanted. */
    TARGET_OUT_OF_REACH(
            "G1902",
            "target-out-of-reach",
            "The blend is to be {target}; what is there gives from {low} to {high}, which misses it by {gap}."),
    /** The batch is heavier than what is there. */
    NOT_ENOUGH("G1903", "not-enough-to-blend", "The batch is to be {batch}; all that is there is {stock}."),
    /** A limit leaves no blend at all. */
    LIMIT_CANNOT_HOLD(
            "G1904",
            "limit-cannot-hold",
            "“{limit}” cannot hold in a batch of {batch} that is {target}: at the best it is missed by {gap}."),
    /** Some tubs have a price and this one has none. */
    PRICE_MISSING("G1905", "price-missing", "{tub} has no price, and {other} has one."),
    /** A promise rests on how far lean strays, and that is not stated. */
    LEAN_SPREAD_MISSING(
            "G1906",
            "lean-spread-missing",
            "How far the lean of {tub} strays is not stated, so nothing can be promised of a blend with it."),
    /** The lean is reached on average at the best, and not as surely as is asked. */
    PROMISE_OUT_OF_REACH(
            "G1907",
            "promise-out-of-reach",
            "That the blend is {target} cannot be promised at {chance}; the most that can be is {most}."),
    /** Two tubs of one name. */
    TUB_TWICE("G1908", "tub-twice", "There are two tubs called {tub}."),
    /** Figures that lie too far apart for arithmetic, or too many tubs for a promise. */
    NO_ANSWER("G1910", "no-answer", "The batch of {batch} that is {target} could not be worked out; {why}.");

    private final Kind kind;

    BlendCode(String id, String slug, String pattern) {
        this.kind = new Kind(id, slug, Severity.ERROR, pattern);
    }

    @Override
    public Kind kind() {
        return kind;
    }
}
