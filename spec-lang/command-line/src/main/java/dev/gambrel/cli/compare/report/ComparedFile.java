package dev.gambrel.cli.compare.report;

import dev.gambrel.cli.argument.FileArgument;
import dev.gambrel.cli.file.SpecFileReader;
import dev.gambrel.compiler.Compilation;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.origin.Origins;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.tree.CutTree;
import java.util.function.UnaryOperator;

/**
 * One of the two that are compared.
 *
 * @param name as given on the command line
 * @param tree what it says
 * @param written where something of the tree is written; of a tree in JSON only where it is in the tree
 */
public record ComparedFile(String name, CutTree tree, UnaryOperator<Place> written) {
    /**
     * Reads a specification or a tree.
     *
     * @param file the file as given
     * @return what it says, with all that was found
     */
    public static Result<ComparedFile> read(String file) {
        if (file.endsWith(".json")) {
            Result<SpecFileReader.Read> read = SpecFileReader.read(file);
            return new Result<>(
                    read.value().map(value -> new ComparedFile(file, value.tree(), place -> place)),
                    read.diagnostics());
        }
        Result<Compilation> compiled = new SpecCompiler().compile(FileArgument.path(file));
        return new Result<>(
                compiled.value().map(compilation -> {
                    Origins origins = compilation.origins();
                    return new ComparedFile(file, compilation.tree(), origins::written);
                }),
                compiled.diagnostics());
    }
}
