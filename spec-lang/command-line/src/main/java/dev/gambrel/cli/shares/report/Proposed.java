package dev.gambrel.cli.shares.report;

import dev.gambrel.compiler.restate.RestatedCut;
import dev.gambrel.compiler.restate.RestatedText;
import java.util.List;

/**
 * What a specification may state instead.
 *
 * @param cuts the cuts whose shares are known anew; those that state all of it already are among them
 * @param texts the files that would change
 */
public record Proposed(List<RestatedCut> cuts, List<RestatedText> texts) {
    /** Nothing, as for a tree that was read from JSON. */
    public static final Proposed NOTHING = new Proposed(List.of(), List.of());

    /** Copies the lists. */
    public Proposed {
        cuts = List.copyOf(cuts);
        texts = List.copyOf(texts);
    }
}
