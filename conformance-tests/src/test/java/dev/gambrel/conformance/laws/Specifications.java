package dev.gambrel.conformance.laws;

import dev.gambrel.compiler.Compilation;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.source.FolderSources;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.SourceText;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;

/** Specifications on file: the house's own, one for each thing that can be said, and one for each slip. */
final class Specifications {
    private static final Path MODULE =
            Path.of(System.getProperty("basedir", "")).toAbsolutePath();
    private static final Path CORPUS = MODULE.resolve("src/test/resources/corpus");
    private static final Path MARRAM = MODULE.resolveSibling("examples").resolve("marram");

    private Specifications() {}

    static List<Path> house() {
        return List.of(
                MARRAM.resolve("hogget.cuts"),
                MARRAM.resolve("hogget-harbour-table.cuts"),
                MARRAM.resolve("fallow.cuts"));
    }

    static List<Path> valid() {
        return Stream.of(house(), in("valid"), revisions())
                .flatMap(List::stream)
                .toList();
    }

    /** Each revises a file beside it. */
    private static List<Path> revisions() {
        try (Stream<Path> folders = Files.list(CORPUS.resolve("revisions"))) {
            return folders.map(folder -> folder.resolve("main.cuts")).sorted().toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static List<Path> withSlips() {
        return Stream.concat(in("invalid").stream(), in("known-faults").stream())
                .toList();
    }

    static List<Path> all() {
        return Stream.concat(valid().stream(), withSlips().stream()).toList();
    }

    /** There is no folder of known faults while none is known. */
    private static List<Path> in(String folder) {
        if (folder.equals("known-faults") && Files.notExists(CORPUS.resolve(folder))) {
            return List.of();
        }
        try (Stream<Path> listed = Files.list(CORPUS.resolve(folder))) {
            return listed.filter(file -> file.toString().endsWith(".cuts"))
                    .sorted()
                    .toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static String text(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static Result<Compilation> compile(Path file) {
        return compile(file, text(file));
    }

    /** Compiles a text as if it stood in a file, so that what it uses is found. */
    static Result<Compilation> compile(Path file, String text) {
        try {
            SourceText source = new SourceText(file.getFileName().toString(), text);
            return new SpecCompiler().compile(source, FolderSources.of(file.getParent(), Limits.DEFAULT));
        } catch (IOException noFolder) {
            throw new UncheckedIOException(noFolder);
        }
    }
}
