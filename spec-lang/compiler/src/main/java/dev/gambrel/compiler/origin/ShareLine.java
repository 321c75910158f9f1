package dev.gambrel.compiler.origin;

import dev.gambrel.text.SourceText;
import dev.gambrel.text.Span;
import java.util.List;

/**
 * The line that states the share of a part: which characters would have to change if it were another. All places are counted from the
 * first character of the text.
 *
 * @param text the file that holds the line
 * @param head what to underline for the line as a whole
 * @param share how the share is written
 * @param sources the names of the sources that the line cites, in the order cited
 */
public record ShareLine(SourceText text, Span head, Share share, List<Span> sources) {
    /** Copies the list. */
    public ShareLine {
        sources = List.copyOf(sources);
    }

    /** How a line says what share a part has. */
    public sealed interface Share {}

    /** It does not. */
    public record NotWritten() implements Share {}

    /** By an equation. */
    public record Estimated() implements Share {}

    /**
     * A mean alone: {@code 33.0 %}.
     *
     * @param mean the characters of the number
     * @param end where the figure ends, and a spread would begin
     */
    public record MeanAlone(Span mean, int end) implements Share {}

    /**
     * A mean and one standard deviation: {@code 33.0 % ± 0.9 %}.
     *
     * @param mean the characters of the number
     * @param deviation those of the number after ±
     * @param end where the figure ends
     */
    public record PlusMinus(Span mean, Span deviation, int end) implements Share {}

    /**
     * A range: {@code 31.2 % to 34.8 %}.
     *
     * @param low the characters of the number
     * @param high those of the number after "to"
     * @param end where the figure ends
     */
    public record Range(Span low, Span high, int end) implements Share {}
}
