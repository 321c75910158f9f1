package dev.gambrel.json.located;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.Span;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;

/** Gathers what is found in one file of JSON, up to a number that nobody would read to the end of. Not thread-safe. */
public final class Findings {
    private static final int LISTED = 1_000;

    private final SourceText text;
    private final boolean muted;
    private final List<Diagnostic> found = new ArrayList<>();

    /**
     * Nothing found yet.
     *
     * @param text the file
     */
    public Findings(SourceText text) {
        this(text, false);
    }

    private Findings(SourceText text, boolean muted) {
        this.text = text;
        this.muted = muted;
    }

    /**
     * For reading what is known to be unreadable, to have something in its place.
     *
     * @return findings of the same file that nobody sees
     */
    public Findings muted() {
        return new Findings(text, true);
    }

    /**
     * Whether nothing was found.
     *
     * @return true until then
     */
    public boolean isEmpty() {
        return found.isEmpty();
    }

    /**
     * A place in the file.
     *
     * @param span which characters
     * @return the place
     */
    public Place.InText place(Span span) {
        return new Place.InText(text, span);
    }

    /**
     * A finding about a value.
     *
     * @param code what is wrong
     * @param pointer the address of the value
     * @param span what to underline
     * @return the finding, not yet added
     */
    public Diagnostic at(JsonCode code, Located.Pointer pointer, Span span) {
        return Diagnostic.of(code, place(span)).with("at", pointer);
    }

    /**
     * Adds that a value is of another kind than is wanted.
     *
     * @param value the value
     * @param wanted what completes the sentence "it must be …"
     */
    public void wrongType(Located value, String wanted) {
        Diagnostic finding = at(JsonCode.WRONG_TYPE, value.pointer(), value.span())
                .with("found", value.words())
                .with("allowed", wanted);
        boolean isNull =
                value instanceof Located.Literal literal && literal.word().equals("null");
        add(isNull ? finding.help("Leave out what is not stated.") : finding);
    }

    /**
     * Adds a finding.
     *
     * @param diagnostic the finding
     */
    public void add(Diagnostic diagnostic) {
        if (!muted && found.size() < LISTED) {
            found.add(diagnostic);
        } else if (!muted && found.size() == LISTED) {
            found.add(Diagnostic.of(JsonCode.TOO_MANY_FINDINGS, diagnostic.place())
                    .with("allowed", LISTED));
        }
    }

    /**
     * The findings.
     *
     * @return in the order of the text
     */
    public List<Diagnostic> inOrder() {
        return found.stream().sorted(Comparator.comparingInt(Findings::start)).toList();
    }

    private static int start(Diagnostic diagnostic) {
        return diagnostic.place() instanceof Place.InText in ? in.span().start() : 0;
    }
}
