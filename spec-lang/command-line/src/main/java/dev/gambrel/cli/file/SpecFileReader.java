package dev.gambrel.cli.file;

import dev.gambrel.cli.argument.FileArgument;
import dev.gambrel.cli.verb.WrongUsage;
import dev.gambrel.compiler.Compilation;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.origin.Origins;
import dev.gambrel.compiler.source.FileCode;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.json.PlacedTree;
import dev.gambrel.json.TreeJsonReader;
import dev.gambrel.limits.Limits;
import dev.gambrel.tree.CutTree;
import dev.gambrel.tree.allowance.AllowedWarning;
import dev.gambrel.tree.rules.TreeRules;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.UnaryOperator;

/** Reads a tree from a specification, or from JSON where the file's name ends in {@code .json}. */
public final class SpecFileReader {
    /**
     * A tree, how many files it was read from, and what was found but is allowed.
     *
     * @param tree the tree
     * @param files how many files
     * @param allowed warnings that are not among the findings
     * @param written where something of the tree is written
     */
    public record Read(CutTree tree, int files, List<AllowedWarning> allowed, UnaryOperator<Place> written) {}

    private SpecFileReader() {}

    /**
     * Reads a file and holds it against every rule.
     *
     * @param file its name as written on the command line
     * @return the tree unless it has errors, and what was found
     * @throws WrongUsage if no file can have that name
     */
    public static Result<Read> read(String file) {
        Path path = FileArgument.path(file);
        if (file.endsWith(".json")) {
            Result<PlacedTree> result = readJson(path);
            return new Result<>(result.value().map(SpecFileReader::read), result.diagnostics());
        }
        var result = new SpecCompiler().compile(path);
        return new Result<>(result.value().map(SpecFileReader::written), result.diagnostics());
    }

    private static Read written(Compilation compilation) {
        List<AllowedWarning> allowed = TreeRules.allowed(compilation.tree());
        return new Read(
                compilation.tree(),
                compilation.texts().size(),
                allowed.isEmpty() ? allowed : placed(allowed, compilation.origins()),
                place -> compilation.origins().written(place));
    }

    private static Read read(PlacedTree placed) {
        return new Read(placed.tree(), 1, TreeRules.allowed(placed.tree()), placed.written());
    }

    private static List<AllowedWarning> placed(List<AllowedWarning> allowed, Origins origins) {
        return allowed.stream()
                .map(warning -> new AllowedWarning(warning.finding().at(origins::written), warning.allowance()))
                .toList();
    }

    /** A pipe or a device is never waited for. */
    private static Path regular(Path path) throws IOException {
        if (Files.exists(path) && !Files.isRegularFile(path)) {
            throw new IOException("not a regular file");
        }
        return path;
    }

    private static Result<PlacedTree> readJson(Path path) {
        String name = String.valueOf(path.getFileName());
        int limit = Limits.DEFAULT.textBytes();
        try (InputStream in = Files.newInputStream(regular(path))) {
            return TreeJsonReader.readPlaced(name, in.readNBytes(limit + 1));
        } catch (IOException unreadable) {
            return Result.failed(List.of(Diagnostic.of(FileCode.CANNOT_READ, new Place.InFile(name))
                    .with("file", name)
                    .help("Look at how the name is written, and who may read the file.")));
        }
    }
}
