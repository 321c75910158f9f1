package dev.gambrel.fuzzing;

import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.format.SpecFormatter;
import dev.gambrel.compiler.parse.SpecParser;
import dev.gambrel.compiler.parse.Word;
import dev.gambrel.compiler.source.FolderSources;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.SourceText;
import java.nio.charset.StandardCharsets;
import java.util.List;

/** A text laid out: its words are those of the original, laid out again it does not change, and it means the same. */
public final class FormatterTarget {
    private static final SpecFormatter FORMATTER = new SpecFormatter();
    private static final SpecParser PARSER = new SpecParser(Limits.DEFAULT);

    private FormatterTarget() {}

    /**
     * Holds one text to it.
     *
     * @param file any bytes
     */
    public static void fuzzerTestOneInput(byte[] file) {
        String written = FolderSources.withoutByteOrderMark(new String(file, StandardCharsets.UTF_8));
        Result<String> result = FORMATTER.format(new SourceText("any.cuts", written));
        FindingsHold.all(result.diagnostics());
        result.value().ifPresent(laidOut -> isTheSame(written, laidOut));
    }

    private static void isTheSame(String written, String laidOut) {
        Holds.isSame(words(written), words(laidOut), "the words");
        SourceText again = new SourceText("any.cuts", FolderSources.withoutByteOrderMark(laidOut));
        Holds.isSame(laidOut, FORMATTER.format(again).value().orElse("refused"), "what is laid out twice");
        Holds.isSame(found(written), found(laidOut), "what is found");
    }

    private static List<String> words(String text) {
        return PARSER.words(new SourceText("any.cuts", text)).orElseThrow().stream()
                .filter(word -> word.kind() != Word.Kind.LINE_END)
                .map(FormatterTarget::spelt)
                .toList();
    }

    private static String spelt(Word word) {
        return switch (word.kind()) {
            case ARROW -> "->";
            case PLUS_MINUS -> "+/-";
            case COMMENT -> word.text().stripTrailing();
            default -> word.text();
        };
    }

    private static List<Code> found(String text) {
        return new SpecCompiler()
                .compile(new SourceText("any.cuts", text), Sources.none()).diagnostics().stream()
                        .map(finding -> finding.code())
                        .toList();
    }
}
