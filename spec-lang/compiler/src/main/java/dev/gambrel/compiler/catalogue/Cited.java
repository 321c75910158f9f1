package dev.gambrel.compiler.catalogue;

import dev.gambrel.tree.Source;
import java.util.List;

/**
 * A figure or a number with what it rests on.
 *
 * @param value what is said
 * @param sources where it is said, and how sure that is
 * @param <T> the kind of value
 */
public record Cited<T>(T value, List<Source> sources) {
    /** Copies the list. */
    public Cited {
        sources = List.copyOf(sources);
    }
}
