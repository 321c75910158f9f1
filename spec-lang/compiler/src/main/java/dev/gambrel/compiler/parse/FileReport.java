package dev.gambrel.compiler.parse;

import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Fix;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.Span;
import dev.gambrel.text.TradeName;
import java.util.function.Consumer;

/**
 * Findings about one text.
 *
 * @param text the text
 * @param found takes each finding
 */
public record FileReport(SourceText text, Consumer<Diagnostic> found) {
    /**
     * A place in the text.
     *
     * @param span the characters
     * @return the place
     */
    public Place.InText at(Span span) {
        return new Place.InText(text, span);
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
