package dev.gambrel.conformance.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.Compilation;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.diagnostic.Result;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** One slip a file: the processor is told of it once, at the right place, in words that help. */
class InvalidCasesTest {
    static List<Path> files() {
        return Corpus.specifications("invalid");
    }

    static List<Path> folders() {
        return Corpus.in(Corpus.folder("invalid-folders"), Files::isDirectory);
    }

    @ParameterizedTest
    @MethodSource("files")
    void a_slip_in_one_file_is_told_as_expected(Path file) {
        holds(file, Corpus.twin(file));
    }

    @ParameterizedTest
    @MethodSource("folders")
    void a_slip_between_files_is_told_as_expected(Path folder) {
        holds(folder.resolve("main.cuts"), folder.resolve("main.expected"));
    }

    private static void holds(Path file, Path twin) {
        Result<Compilation> result = new SpecCompiler().compile(file);
        assertFalse(result.diagnostics().isEmpty(), "something is found");
        assertEquals(Corpus.announced(file), Corpus.codes(result.diagnostics()), "one slip, one message");
        assertEquals(Result.hasError(result.diagnostics()), result.value().isEmpty(), "no tree with an error in it");
        Corpus.hold(Corpus.report(result.diagnostics()), twin);
    }

    @Test
    void there_are_cases_enough() {
        assertTrue(files().size() >= 80, files().size() + " files");
    }
}
