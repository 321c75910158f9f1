package dev.gambrel.json;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.function.Function;

/** Reads an object whose field "kind" says which of several things it is. */
final class Kinds<T> implements Reading<T> {
    private final Map<String, Function<ObjectReader, ? extends T>> bodies = new LinkedHashMap<>();

    /** With another kind; the first one gives the stand-in. */
    Kinds<T> or(String kind, Function<ObjectReader, ? extends T> body) {
        bodies.put(kind, body);
        return this;
    }

    @Override
    public T read(Located value, Findings findings) {
        return Readings.object(this::byKind).read(value, findings);
    }

    private T byKind(ObjectReader in) {
        List<String> words = List.copyOf(bodies.keySet());
        String kind = in.need("kind", Shown.list(words), Readings.word(words, Function.identity()));
        return bodies.get(kind).apply(in.says("kind", kind) ? in : in.givenUp());
    }
}
