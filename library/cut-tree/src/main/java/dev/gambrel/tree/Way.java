package dev.gambrel.tree;

import dev.gambrel.text.TradeName;
import dev.gambrel.tree.anatomy.PieceCount;
import dev.gambrel.tree.choice.Choice;

/**
 * One of the ways in which a cut is worked. All of the cut enters each of them, and each is all of it by itself; a cut
 * that has ways has no other parts.
 *
 * @param work the way's name, and what leaves a piece so worked; it has no share and no count of its own
 * @param choice when the cut is worked so
 */
public record Way(Cut work, Choice choice) implements Part {
    /**
     * Checks that the work has no share or count.
     *
     * @throws IllegalArgumentException if it has
     */
    public Way {
        if (!(work.share() instanceof Share.NotStated) || work.pieces() != PieceCount.NOT_STATED) {
            throw new IllegalArgumentException("a way has the share and the count of its cut: " + work.name());
        }
    }

    @Override
    public TradeName name() {
        return work.name();
    }

    @Override
    public Share share() {
        return work.share();
    }

    @Override
    public Home home() {
        return work.home();
    }
}
