package dev.gambrel.conformance.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.format.FormatCode;
import dev.gambrel.compiler.format.SpecFormatter;
import dev.gambrel.compiler.source.FolderSources;
import dev.gambrel.compiler.source.Found;
import dev.gambrel.diagnostic.Code;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.SourceText;
import java.nio.file.Path;
import java.util.EnumSet;
import java.util.List;
import java.util.Locale;
import java.util.Set;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;

/** However a sheet was typed, it is laid out as expected; or it is left as it is, and it is told why. */
class FormatCasesTest {
    private static final String MARK = "\uFEFF";

    static List<Path> files() {
        return Corpus.specifications("format");
    }

    @ParameterizedTest
    @MethodSource("files")
    void a_sheet_is_laid_out_as_expected(Path file) {
        Found found = FolderSources.read(file, file.getFileName().toString(), Limits.DEFAULT);
        String formatted =
                new SpecFormatter().format(((Found.Text) found).text()).orElseThrow();
        Corpus.hold(formatted, Corpus.twin(file));
    }

    /** Texts that are left as they are. */
    enum Refused {
        /** At the front of a file the mark is skipped. */
        MARK_BEFORE_THE_FIRST_WORD(FormatCode.WORDS_CHANGED, Limits.DEFAULT, "  " + MARK + "language 1\n"),
        /** Twenty bytes become thirty. */
        GROWN_TOO_LARGE(
                FormatCode.TOO_LARGE, new Limits(25, 100, 50, 8, 20_000, 50_000, 50), "cut a{\ncut b{\ncut c{\n");

        private final Code code;
        private final Limits limits;
        private final String text;

        Refused(Code code, Limits limits, String text) {
            this.code = code;
            this.limits = limits;
            this.text = text;
        }

        private Path twin() {
            return Corpus.folder("format").resolve(name().toLowerCase(Locale.ROOT) + ".expected");
        }
    }

    @ParameterizedTest
    @EnumSource
    void a_text_is_left_as_it_is_as_expected(Refused refused) {
        Result<String> result = new SpecFormatter(refused.limits).format(new SourceText("hogget.cuts", refused.text));
        assertEquals(refused.code.id(), Corpus.codes(result.diagnostics()));
        Corpus.hold(Corpus.report(result.diagnostics()), refused.twin());
    }

    @Test
    void every_reason_to_leave_a_text_has_a_case() {
        Set<FormatCode> left = EnumSet.allOf(FormatCode.class);
        List.of(Refused.values()).forEach(refused -> left.remove(refused.code));
        assertEquals(Set.of(), left);
    }

    @Test
    void there_are_cases_enough() {
        assertTrue(files().size() >= 8, files().size() + " files");
    }
}
