package dev.gambrel.cli;

import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.source.FileCode;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.Place;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.json.TreeJsonReader;
import dev.gambrel.limits.Limits;
import dev.gambrel.tree.CutTree;
import java.io.IOException;
import java.io.InputStream;
import java.nio.file.Files;
import java.nio.file.InvalidPathException;
import java.nio.file.Path;
import java.util.List;

/** Reads a tree from a specification, or from JSON where the file's name ends in {@code .json}. */
final class SpecFileReader {
    /**
     * A tree and how many files it was read from.
     *
     * @param tree the tree
     * @param files how many files
     */
    record Read(CutTree tree, int files) {}

    private SpecFileReader() {}

    static Result<Read> read(String file) {
        Path path = path(file);
        if (file.endsWith(".json")) {
            Result<CutTree> result = readJson(path);
            return new Result<>(result.value().map(tree -> new Read(tree, 1)), result.diagnostics());
        }
        var result = new SpecCompiler().compile(path);
        return new Result<>(result.value().map(c -> new Read(c.tree(), c.texts().size())), result.diagnostics());
    }

    static Path path(String file) {
        try {
            return Path.of(file);
        } catch (InvalidPathException noPath) {
            throw new WrongUsage("“" + file + "” cannot be the name of a file.");
        }
    }

    /** A pipe or a device is never waited for. */
    private static Path regular(Path path) throws IOException {
        if (Files.exists(path) && !Files.isRegularFile(path)) {
            throw new IOException("not a regular file");
        }
        return path;
    }

    private static Result<CutTree> readJson(Path path) {
        String name = String.valueOf(path.getFileName());
        int limit = Limits.DEFAULT.textBytes();
        try (InputStream in = Files.newInputStream(regular(path))) {
            return TreeJsonReader.read(name, in.readNBytes(limit + 1));
        } catch (IOException unreadable) {
            return Result.failed(List.of(Diagnostic.of(FileCode.CANNOT_READ, new Place.InFile(name))
                    .with("file", name)
                    .help("Look at how the name is written, and who may read the file.")));
        }
    }
}
