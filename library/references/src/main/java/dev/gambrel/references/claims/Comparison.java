package dev.gambrel.references.claims;

import dev.gambrel.references.source.Citation;
import java.util.List;

/**
 * What the number says, what the words say, and how the two stand to one another.
 *
 * @param agreement how they stand
 * @param published what the number says, in words; where it says nothing, why
 * @param claim what the words say
 * @param sources where what the number says stands; empty where it says nothing
 */
public record Comparison(Agreement agreement, String published, Claim claim, List<Citation> sources) {
    /** Copies the list. */
    public Comparison {
        sources = List.copyOf(sources);
    }

    /**
     * Whether it rests on something that must be looked up first.
     *
     * @return true if a source is from memory
     */
    public boolean restsOnMemory() {
        return sources.stream().anyMatch(Citation::isFromMemory);
    }

    static Comparison notStated(Claim claim, String why) {
        return new Comparison(Agreement.NOT_STATED, why, claim, List.of());
    }
}
