package dev.gambrel.cli.shares;

import dev.gambrel.cli.argument.FileArgument;
import dev.gambrel.cli.file.SpecFileReader;
import dev.gambrel.compiler.Compilation;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.source.FileCode;
import dev.gambrel.compiler.source.FolderSources;
import dev.gambrel.compiler.source.Found;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.limits.Limits;
import dev.gambrel.tree.CutTree;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;

/** A specification, with its lines where it has any. */
sealed interface SpecAsWritten {
    /** The specification itself. */
    CutTree tree();

    /** A tree from JSON, of which no line can be edited. */
    record Tree(CutTree tree) implements SpecAsWritten {}

    /** A specification in words, and where the files that it uses are. */
    record Lines(Compilation compilation, Sources sources) implements SpecAsWritten {
        @Override
        public CutTree tree() {
            return compilation.tree();
        }
    }

    static Result<SpecAsWritten> read(String file) {
        if (file.endsWith(".json")) {
            Result<SpecFileReader.Read> read = SpecFileReader.read(file);
            return new Result<>(read.value().map(found -> new Tree(found.tree())), read.diagnostics());
        }
        Path path = FileArgument.path(file);
        String name = String.valueOf(path.getFileName());
        try {
            Found found = FolderSources.read(path, name, Limits.DEFAULT);
            if (found instanceof Found.Text text) {
                Sources sources = FolderSources.of(path.toAbsolutePath().getParent(), Limits.DEFAULT);
                Result<Compilation> result = new SpecCompiler().compile(text.text(), sources);
                return new Result<>(
                        result.value().map(compilation -> new Lines(compilation, sources)), result.diagnostics());
            }
            return Result.failed(List.of(((Found.Refused) found).finding(name, Limits.DEFAULT)));
        } catch (IOException noFolder) {
            return Result.failed(List.of(new Found.Refused(FileCode.CANNOT_READ, 0).finding(name, Limits.DEFAULT)));
        }
    }
}
