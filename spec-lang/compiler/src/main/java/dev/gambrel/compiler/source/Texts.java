package dev.gambrel.compiler.source;

import dev.gambrel.diagnostic.Place;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.Span;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;

/**
 * The texts of one compilation laid end to end, so that a span tells by itself which text it lies in. Lines of several
 * files may then make one statement, as where a revision changes half a line, and each word still knows its place.
 *
 * <p>Grows while files are read. A look-up costs O(log texts). Not safe between threads.
 */
public final class Texts {
    private final List<SourceText> texts = new ArrayList<>();
    private final List<Integer> starts = new ArrayList<>();
    private int end;

    /** Begins with no text. */
    public Texts() {}

    /**
     * Lays down another text.
     *
     * @param text the text
     * @return where its first character lies among all
     */
    public int add(SourceText text) {
        int start = end;
        texts.add(text);
        starts.add(start);
        end = Math.addExact(start, text.text().length() + 1);
        return start;
    }

    /**
     * The place of a span in its own text.
     *
     * @param span a span within one of the texts
     * @return the text and the span as counted from that text's first character
     */
    public Place.InText at(Span span) {
        int found = Collections.binarySearch(starts, span.start());
        int index = found >= 0 ? found : -found - 2;
        int start = starts.get(index);
        return new Place.InText(texts.get(index), new Span(span.start() - start, span.end() - start));
    }

    /**
     * The characters of a span.
     *
     * @param span a span within one of the texts
     * @return as written
     */
    public String slice(Span span) {
        Place.InText place = at(span);
        return place.text().slice(place.span());
    }
}
