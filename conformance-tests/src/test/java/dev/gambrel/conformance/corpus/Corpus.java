package dev.gambrel.conformance.corpus;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.diagnostic.PlainReport;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Predicate;
import java.util.stream.Collectors;
import java.util.stream.Stream;

/** The folder of files, and how what is found is held against what is expected. */
final class Corpus {
    private static final Path ROOT = Path.of(System.getProperty("basedir", ""), "src", "test", "resources", "corpus");
    private static final int MOST_SHOWN = 50;
    private static final String EXPECT = "// expect ";

    private Corpus() {}

    static Path folder(String name) {
        return ROOT.resolve(name);
    }

    /** What stands in a folder, in the order of names. */
    static List<Path> in(Path folder, Predicate<Path> which) {
        try (Stream<Path> listed = Files.list(folder)) {
            return listed.filter(which).sorted().toList();
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static List<Path> specifications(String folder) {
        return in(folder(folder), file -> file.toString().endsWith(".cuts"));
    }

    /** The file beside it that says what is expected. */
    static Path twin(Path specification) {
        String name = specification.getFileName().toString();
        return specification.resolveSibling(name.replaceAll("\\.[a-z]+$", "") + ".expected");
    }

    /** The codes that the first line of a file announces. */
    static String announced(Path specification) {
        String first = read(specification).lines().findFirst().orElse("");
        assertTrue(first.startsWith(EXPECT), specification + " begins with \"" + EXPECT + "\" and the codes");
        return first.substring(EXPECT.length());
    }

    static String codes(List<Diagnostic> findings) {
        return findings.stream().map(finding -> finding.code().id()).collect(Collectors.joining(" "));
    }

    static String report(List<Diagnostic> findings) {
        return new PlainReport(PlainReport.Paint.NONE).print(findings, MOST_SHOWN);
    }

    /** Compares byte for byte, or writes the expected text anew if asked to. */
    static void hold(String found, Path twin) {
        if (Boolean.getBoolean("update")) {
            write(found, twin);
        }
        assertTrue(Files.exists(twin), twin.getFileName() + " is missing; -Dupdate=true writes it");
        assertEquals(read(twin), found, twin.getFileName().toString());
    }

    static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException unreadable) {
            throw new UncheckedIOException(unreadable);
        }
    }

    static void write(String text, Path file) {
        try {
            Files.createDirectories(file.getParent());
            Files.writeString(file, text);
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }
}
