package dev.gambrel.conformance.corpus;

import dev.gambrel.compiler.Compilation;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.limits.Limits;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.Locale;

/** Files that cannot be kept among the others, made where they are needed. */
enum HostileCase {
    /** A link in the folder leads out of it. */
    LINK_OUT_OF_THE_FOLDER("G0107", folder -> {
        Files.writeString(folder.resolve("streams.cuts"), "language 1\nstream bones, by-product\n");
        Path inner = Files.createDirectory(folder.resolve("inner"));
        Files.createSymbolicLink(inner.resolve("streams.cuts"), Path.of("..", "streams.cuts"));
        return sheet(inner, "streams.cuts");
    }),
    /** Two links lead to one another. */
    LINKS_THAT_GO_ROUND("G0101", folder -> {
        Files.createSymbolicLink(folder.resolve("streams.cuts"), Path.of("tubs.cuts"));
        Files.createSymbolicLink(folder.resolve("tubs.cuts"), Path.of("streams.cuts"));
        return sheet(folder, "streams.cuts");
    }),
    /** A folder has the name of a file. */
    FOLDER_FOR_A_SPECIFICATION("G0101", folder -> Files.createDirectory(folder.resolve("hogget.cuts"))),
    /** A folder is used. */
    FOLDER_IN_USE("G0108", folder -> {
        Files.createDirectory(folder.resolve("streams.cuts"));
        return sheet(folder, "streams.cuts");
    }),
    /** Nobody saved the file. */
    NO_SUCH_SPECIFICATION("G0108", folder -> folder.resolve("hogget.cuts")),
    /** One byte more than 1 MiB. */
    SPECIFICATION_TOO_LARGE("G0102", folder -> large(folder.resolve("hogget.cuts"))),
    /** A used file of one byte more than 1 MiB. */
    USED_FILE_TOO_LARGE("G0102", folder -> {
        large(folder.resolve("streams.cuts"));
        return sheet(folder, "streams.cuts");
    }),
    /** Plus-minus as an old program writes it: one byte, B1 in ISO 8859-1. */
    SPECIFICATION_NOT_UTF_8("G0103", folder -> oldText(folder.resolve("hogget.cuts"))),
    /** The same in a used file. */
    USED_FILE_NOT_UTF_8("G0103", folder -> {
        oldText(folder.resolve("streams.cuts"));
        return sheet(folder, "streams.cuts");
    }),
    /** 101 cuts inside one another. */
    CUTS_TOO_DEEP("G0112", folder -> Files.writeString(folder.resolve("hogget.cuts"), Sheets.cutsInCuts(101))),
    /** One statement more than 20,000. */
    TOO_MANY_STATEMENTS("G0105", folder -> Files.writeString(folder.resolve("hogget.cuts"), Sheets.statements(20_001))),
    /** One file more than 50, the catalogue's counted. */
    TOO_MANY_FILES("G0106", folder -> Sheets.files(folder, 51)),
    /** A species of one bone more than 1,999, and the piece that holds them. */
    TOO_MANY_STRUCTURES("G0150", folder -> Files.writeString(folder.resolve("hogget.cuts"), Sheets.bones(2_000))),
    /** One part more than a small limit allows. */
    TOO_MANY_PARTS(
            "G0111",
            new Limits(1 << 20, 100, 50, 8, 20_000, 3, 50),
            folder -> Files.writeString(
                    folder.resolve("hogget.cuts"), Sheets.hogget("cut a 1 %\ncut b 1 %\ncut c 1 %\nrest -> mince\n")));

    private interface Maker {
        Path make(Path folder) throws IOException;
    }

    private final String codes;
    private final Limits limits;
    private final Maker maker;

    HostileCase(String codes, Maker maker) {
        this(codes, Limits.DEFAULT, maker);
    }

    HostileCase(String codes, Limits limits, Maker maker) {
        this.codes = codes;
        this.limits = limits;
        this.maker = maker;
    }

    String codes() {
        return codes;
    }

    Path twin() {
        return Corpus.folder("hostile").resolve(name().toLowerCase(Locale.ROOT) + ".expected");
    }

    /** What is found, after making the files in a folder of its own. */
    Result<Compilation> compileIn(Path temporary) {
        try {
            Path folder = Files.createDirectories(temporary.resolve(name()));
            return new SpecCompiler(limits).compile(maker.make(folder));
        } catch (IOException unwritable) {
            throw new UncheckedIOException(unwritable);
        }
    }

    private static Path sheet(Path folder, String used) throws IOException {
        return Files.writeString(folder.resolve("hogget.cuts"), Sheets.using(used));
    }

    private static Path large(Path file) throws IOException {
        return Files.writeString(file, "language 1\n//" + "x".repeat((1 << 20) - 12));
    }

    private static Path oldText(Path file) throws IOException {
        return Files.write(file, "language 1\nnote \"33 % ± 0.9 %\"\n".getBytes(StandardCharsets.ISO_8859_1));
    }
}
