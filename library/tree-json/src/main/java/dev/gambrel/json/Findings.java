package dev.gambrel.json;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Gathers what is found in one file, up to a number that nobody would read to the end of. */
final class Findings {
    private static final int LISTED = 1_000;

    private final SourceText text;
    private final boolean muted;
    private final List<Diagnostic> found = new ArrayList<>();

    Findings(SourceText text) {
        this(text, false);
    }

    private Findings(SourceText text, boolean muted) {
        this.text = text;
        this.muted = muted;
    }

    /** For reading what is known to be unreadable, to have something in its place. */
    Findings muted() {
        return new Findings(text, true);
    }

    boolean isEmpty() {
        return found.isEmpty();
    }

    Place.InText place(Span span) {
        return new Place.InText(text, span);
    }

    Diagnostic at(JsonCode code, Located.Pointer pointer, Span span) {
        return Diagnostic.of(code, place(span)).with("at", pointer);
    }

    void add(Diagnostic diagnostic) {
        if (!muted && found.size() < LISTED) {
            found.add(diagnostic);
        } else if (!muted && found.size() == LISTED) {
            found.add(Diagnostic.of(JsonCode.TOO_MANY_FINDINGS, diagnostic.place())
                    .with("allowed", LISTED));
        }
    }

    /** The findings in the order of the text. */
    List<Diagnostic> inOrder() {
        return found.stream().sorted(Comparator.comparingInt(Findings::start)).toList();
    }

    private static int start(Diagnostic diagnostic) {
        return diagnostic.place() instanceof Place.InText in ? in.span().start() : 0;
    }
}
