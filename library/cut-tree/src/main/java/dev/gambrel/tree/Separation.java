package dev.gambrel.tree;

import java.util.List;

/**
 * How a cut is parted from its neighbours.
 *
 * @param tools "knife", "saw", "hand"; empty where none was given
 * @param landmark where
 */
public record Separation(List<String> tools, Landmark landmark) {
    /** Copies the list. */
    public Separation {
        tools = List.copyOf(tools);
    }
}
