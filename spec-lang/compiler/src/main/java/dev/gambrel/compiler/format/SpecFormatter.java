package dev.gambrel.compiler.format;

import dev.gambrel.compiler.parse.SpecParser;
import dev.gambrel.compiler.parse.Word;
import dev.gambrel.compiler.source.FolderSources;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.Span;
import java.nio.charset.StandardCharsets;
import java.util.List;

/**
 * Lays a specification out: blocks indented, one space between words, shares and arrows in columns, at most one empty
 * line in a row, each line ended by a line feed. Only gaps, empty lines and the spelling of ± and the arrow change: no
 * word moves to another line. It knows words and signs and no statement, so it lays out what cannot be read as well as
 * what can. Laid out twice, a text is as it was laid out once. Thread-safe; costs O(length of the text).
 *
 * <p>Before the text is handed out it is read back and its words, comments among them, are held against those of the
 * original; where they differ in anything, there is a finding and no text.
 *
 * <p>Columns: a cutting sheet is read down its figures, and processors line them up by hand. So lines that stand directly
 * in the same block, without an empty line between, have their shares one below the other by the decimal point, and
 * their arrows one below the other. What lies in deeper braces has columns of its own, what is alone in a column follows
 * after one space, and a line of more than 40 characters before its share stays out. A column hangs on words and never on
 * the gaps that were there, so a layout is stable; a change moves its neighbours and no others, and a writer who wants
 * fewer of them puts in an empty line.
 */
public final class SpecFormatter {
    private final Limits limits;
    private final SpecParser parser;

    /** A formatter with the usual limits. */
    public SpecFormatter() {
        this(Limits.DEFAULT);
    }

    /**
     * A formatter with limits of one's own.
     *
     * @param limits how long the text may be when laid out, how deep its braces stand and how many lines it has
     */
    public SpecFormatter(Limits limits) {
        this.limits = limits;
        this.parser = new SpecParser(limits);
    }

    /**
     * Lays a text out.
     *
     * @param text any text, whether it can be compiled or not
     * @return the text laid out; empty if it holds no word; or why it is left as it is
     */
    public Result<String> format(SourceText text) {
        Result<List<Word>> read = parser.words(text);
        if (read.value().isEmpty()) {
            return Result.failed(read.diagnostics());
        }
        List<Word> words = read.value().get();
        String formatted = Layout.of(words);
        long bytes = formatted.getBytes(StandardCharsets.UTF_8).length;
        if (bytes > limits.textBytes()) {
            return Result.failed(List.of(tooLarge(text.name(), bytes)));
        }
        SourceText again = new SourceText(text.name(), FolderSources.withoutByteOrderMark(formatted));
        List<Span> changed = parser.words(again)
                .value()
                .map(others -> SameWords.firstChange(words, others))
                .orElse(List.of(new Span(0, 0)));
        return changed.isEmpty()
                ? Result.of(formatted, List.of())
                : Result.failed(List.of(wordsChanged(text, changed.get(0))));
    }

    private static Diagnostic wordsChanged(SourceText text, Span where) {
        return Diagnostic.of(FormatCode.WORDS_CHANGED, new Place.InText(text, where))
                .help("Write the word that is marked anew: a character that cannot be seen may stand in it.");
    }

    private Diagnostic tooLarge(String name, long bytes) {
        return Diagnostic.of(FormatCode.TOO_LARGE, new Place.InFile(name))
                .with("file", name)
                .with("found", bytes)
                .with("allowed", limits.textBytes())
                .help("Divide the specification into several files, and take them in with use lines.");
    }
}
