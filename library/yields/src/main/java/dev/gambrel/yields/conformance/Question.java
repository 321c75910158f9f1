package dev.gambrel.yields.conformance;

import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.yields.CarcassWeight;
import dev.gambrel.yields.working.Working;
import java.util.List;
import java.util.Map;

/**
 * What whoever compares two texts adds to them.
 *
 * @param matches which path of the house's answers to which path of the buyer's, where names alone do not tell
 * @param carcasses for which carcasses weights are expected; where there is none, for the lightest and the heaviest of the
 *     house's band
 * @param working how the house's carcasses are worked
 */
public record Question(Map<TreePath, TreePath> matches, List<CarcassWeight> carcasses, Working working) {
    /** Nothing added. */
    public static final Question PLAIN = new Question(Map.of(), List.of(), Working.AS_WRITTEN);

    /** Copies both. */
    public Question {
        matches = Map.copyOf(matches);
        carcasses = List.copyOf(carcasses);
    }
}
