package dev.gambrel.conformance.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.Compilation;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.json.TreeJsonWriter;
import dev.gambrel.tree.CutTree;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A revision says the same as the specification written out anew: each folder has it both ways. */
class RevisionCasesTest {
    static List<Path> folders() {
        return Corpus.in(Corpus.folder("revisions"), Files::isDirectory);
    }

    @ParameterizedTest
    @MethodSource("folders")
    void a_revision_is_what_it_would_be_written_out(Path folder) {
        assertEquals(
                TreeJsonWriter.write(tree(folder.resolve("written_out.cuts"))),
                TreeJsonWriter.write(tree(folder.resolve("main.cuts"))));
    }

    private static CutTree tree(Path file) {
        Result<Compilation> result = new SpecCompiler().compile(file);
        assertTrue(result.value().isPresent(), Corpus.report(result.diagnostics()));
        return result.orElseThrow().tree();
    }

    @Test
    void there_are_cases_enough() {
        assertTrue(folders().size() >= 10, folders().size() + " folders");
    }
}
