package dev.gambrel.conformance.corpus;

import static org.junit.jupiter.api.Assertions.assertNotEquals;

import dev.gambrel.compiler.SpecCompiler;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Slips that are not yet told as they should be: the first line has the codes that are wanted, and they do not come. */
class KnownFaultsTest {
    static List<Path> files() {
        return Corpus.specifications("known-faults");
    }

    @ParameterizedTest(allowZeroInvocations = true)
    @MethodSource("files")
    void a_known_fault_moves_to_the_invalid_cases_once_it_is_mended(Path file) {
        assertNotEquals(Corpus.announced(file), found(file), "mended: move it to the invalid cases");
    }

    private static String found(Path file) {
        try {
            return Corpus.codes(new SpecCompiler().compile(file).diagnostics());
        } catch (RuntimeException thrown) {
            return thrown.toString();
        }
    }
}
