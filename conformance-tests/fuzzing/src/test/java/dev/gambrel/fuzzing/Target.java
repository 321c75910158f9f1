package dev.gambrel.fuzzing;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;

/** The ways in, each with the files that are kept for it. */
enum Target {
    WORDS("Words", WordsTarget::fuzzerTestOneInput),
    PARSER("Parser", ParserTarget::fuzzerTestOneInput),
    COMPILER("Compiler", CompilerTarget::fuzzerTestOneInput),
    FORMATTER("Formatter", FormatterTarget::fuzzerTestOneInput),
    TREE_JSON("TreeJson", TreeJsonTarget::fuzzerTestOneInput),
    CARCASSES("Carcasses", CarcassesTarget::fuzzerTestOneInput),
    SHEETS("Sheets", SheetsTarget::fuzzerTestOneInput),
    CONFORMANCE("Conformance", ConformanceTarget::fuzzerTestOneInput);

    private static final Path KEPT = Path.of(System.getProperty("basedir", ""))
            .toAbsolutePath()
            .resolve("src/test/resources/dev/gambrel/fuzzing");

    private final String folder;
    private final Consumer<byte[]> law;

    Target(String folder, Consumer<byte[]> law) {
        this.folder = folder;
        this.law = law;
    }

    void holds(byte[] file) {
        law.accept(file);
    }

    /** The small set that reaches whatever the fuzzer reached. */
    List<Path> seeds() {
        return files(KEPT.resolve("seeds").resolve(folder));
    }

    /** What once broke it. */
    List<Path> found() {
        return files(KEPT.resolve("found").resolve(folder));
    }

    static byte[] bytes(Path file) {
        try {
            return Files.readAllBytes(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    private static List<Path> files(Path folder) {
        if (Files.notExists(folder)) {
            return List.of();
        }
        try (Stream<Path> files = Files.list(folder)) {
            return files.sorted().toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }
}
