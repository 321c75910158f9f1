package dev.gambrel.conformance.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.Compilation;
import dev.gambrel.diagnostic.Result;
import java.nio.file.Path;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What is too large, lies elsewhere or is no text at all is refused with one message. */
class HostileCasesTest {
    @ParameterizedTest
    @EnumSource
    void a_hostile_file_is_refused_as_expected(HostileCase hostile, @TempDir Path temporary) {
        Result<Compilation> result = hostile.compileIn(temporary);
        assertEquals(hostile.codes(), Corpus.codes(result.diagnostics()));
        assertTrue(result.value().isEmpty(), "no tree");
        Corpus.hold(Corpus.report(result.diagnostics()), hostile.twin());
    }
}
