package dev.gambrel.conformance.laws;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.internal.grammar.GambrelParser;
import dev.gambrel.compiler.source.Catalogue;
import dev.gambrel.compiler.source.Sources;
import java.nio.file.Path;
import java.util.List;
import net.jqwik.api.Example;
import org.antlr.v4.runtime.CommonTokenStream;
import org.antlr.v4.runtime.ListTokenSource;
import org.antlr.v4.runtime.dfa.DFA;

/**
 * One word of look-ahead decides everywhere. The prediction that looks further, and whose cost depends on the text, keeps
 * what it learnt in tables that all parsers share; they stay empty, so there is no ambiguity and no full-context look-ahead.
 */
class OneTokenLaws {
    private static DFA[] tables() {
        return new GambrelParser(new CommonTokenStream(new ListTokenSource(List.of()))).getInterpreter().decisionToDFA;
    }

    @Example
    void no_table_of_look_ahead_is_filled_by_sound_or_faulty_files() {
        for (Path file : Specifications.all()) {
            Specifications.compile(file);
        }
        for (var species : Catalogue.names()) {
            new SpecCompiler().compile(Catalogue.text(species).orElseThrow(), Sources.none());
        }
        assertTrue(tables().length > 0);
        for (DFA table : tables()) {
            assertEquals(0, table.states.size(), "decision " + table.decision);
        }
    }
}
