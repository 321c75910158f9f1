package dev.gambrel.compiler.syntax;

import dev.gambrel.text.SourceText;
import java.util.List;

/**
 * One file as written.
 *
 * @param text its text
 * @param start where the text begins among all texts of the compilation
 * @param statements its lines, in order
 */
public record SpecFile(SourceText text, int start, List<Statement> statements) {
    /** Copies the list. */
    public SpecFile {
        statements = List.copyOf(statements);
    }
}
