package dev.gambrel.compiler.parse;

import dev.gambrel.compiler.source.Texts;
import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Fix;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.Span;
import dev.gambrel.text.TradeName;
import java.util.function.Consumer;

/**
 * Findings about one text among those of a compilation.
 *
 * @param texts all texts, in which spans are counted
 * @param text the text
 * @param start where it begins among them
 * @param found takes each finding
 */
public record FileReport(Texts texts, SourceText text, int start, Consumer<Diagnostic> found) {
    /** What the grammar takes for a gap or the end of a line; every other character, seen or not, is a word of some kind. */
    private static final String BETWEEN_WORDS = " \t\u00A0\r\n";

    /**
     * A place in this or another text of the compilation.
     *
     * @param span the characters
     * @return the place
     */
    public Place.InText at(Span span) {
        return texts.at(span);
    }

    /**
     * The characters of a span in this or another text of the compilation.
     *
     * @param span the characters
     * @return as written
     */
    public String slice(Span span) {
        return texts.slice(span);
    }

    /**
     * Where the first word of the text is, for what is said of it as a whole: empty lines before it make no difference.
     *
     * @return a bare position
     */
    public Span beginning() {
        String written = text.text();
        int at = 0;
        while (at < written.length() && BETWEEN_WORDS.indexOf(written.charAt(at)) >= 0) {
            at++;
        }
        return new Span(start + at, start + at);
    }

    /**
     * The line that a span of this text begins in, however lines end.
     *
     * @param span the characters
     * @return counted from 1
     */
    public int lineOf(Span span) {
        return text.position(span.start() - start).line();
    }

    /**
     * The start of a finding.
     *
     * @param code its kind
     * @param span where
     * @return a finding to be filled in and handed to {@link #add}
     */
    public Diagnostic finding(Code code, Span span) {
        return Diagnostic.of(code, at(span));
    }

    /**
     * A finding that offers the word that was probably meant.
     *
     * @param finding the finding
     * @param span what would be replaced
     * @param near what was probably meant
     * @return the finding with the question and the change
     */
    public Diagnostic didYouMean(Diagnostic finding, Span span, TradeName near) {
        return finding.help("Did you mean “" + near + "”?").fix(new Fix(at(span), near.text(), false));
    }

    /**
     * Reports a finding.
     *
     * @param finding the finding
     */
    public void add(Diagnostic finding) {
        found.accept(finding);
    }
}
