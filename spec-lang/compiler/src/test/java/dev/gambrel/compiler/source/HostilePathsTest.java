package dev.gambrel.compiler.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTimeoutPreemptively;
import static org.junit.jupiter.api.Assertions.assertTrue;
import static org.junit.jupiter.api.Assumptions.assumeFalse;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.limits.Limits;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.PosixFilePermissions;
import java.time.Duration;
import java.util.Set;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** No name and no link leads out of the folder, whatever a system makes of it, and nothing is waited for. */
class HostilePathsTest {
    private static final Duration NEVER = Duration.ofSeconds(20);

    @TempDir
    Path around;

    private Path folder;

    @BeforeEach
    void lay_out_the_folders() throws IOException {
        folder = Files.createDirectories(around.resolve("house"));
        Files.createDirectories(folder.resolve("below"));
        Files.writeString(around.resolve("secret.cuts"), "secret");
        Files.writeString(folder.resolve("streams.cuts"), "streams");
    }

    private FileCode refused(String name) throws IOException {
        return ((Found.Refused) FolderSources.of(folder, Limits.DEFAULT).find(name, "main.cuts")).code();
    }

    /** Windows takes a dot or a blank from the end of a name, so that another file is opened than was named. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "streams.cuts.",
                "streams.cuts ",
                "streams.cuts. .",
                ".../secret.cuts",
                ".. /secret.cuts",
                "below./x.cuts",
                "below /x.cuts"
            })
    void a_name_that_ends_in_a_dot_or_a_blank_is_refused(String name) throws IOException {
        assertEquals(FileCode.OUTSIDE, refused(name));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "aux/streams.cuts",
                "below/nul/x.cuts",
                "com1/x.cuts",
                "COM¹.cuts",
                "lpt³.cuts",
                "CONIN$",
                "conout$.cuts",
                "con .cuts",
                "Nul.tar.cuts"
            })
    void a_device_is_refused_wherever_it_stands_in_a_path(String name) throws IOException {
        assertEquals(FileCode.OUTSIDE, refused(name));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "CATALOGUE:sheep", "Catalogue:../secret", "streams.cuts::$DATA", "c:secret.cuts",
                        "\\\\host\\share\\x.cuts",
                "//host/share/x.cuts", "\\\\?\\C:\\x.cuts", "/dev/stdin", "/proc/self/environ", "~\\x.cuts"
            })
    void drives_shares_streams_and_other_schemes_are_refused(String name) throws IOException {
        assertEquals(FileCode.OUTSIDE, refused(name));
    }

    /** They are names like any other, and no such file is there. */
    @ParameterizedTest
    @ValueSource(
            strings = {
                "%2e%2e/secret.cuts", "..%2fsecret.cuts", "..\u2215secret.cuts", "..\uff0fsecret.cuts",
                        "..\u2044secret.cuts",
                "\u2024\u2024/secret.cuts", "~/secret.cuts", "$HOME/secret.cuts", "*.cuts", "streams.cuts\0.txt",
                "..\0/secret.cuts"
            })
    void what_only_looks_like_a_way_out_is_a_name(String name) throws IOException {
        assertEquals(FileCode.MISSING, refused(name));
    }

    @Test
    void a_name_of_any_length_is_answered() throws IOException {
        Set<FileCode> notFound = Set.of(FileCode.CANNOT_READ, FileCode.MISSING);
        assertTrue(notFound.contains(refused("x".repeat(100_000) + ".cuts")));
        assertTrue(notFound.contains(refused("below/".repeat(30_000) + "secret.cuts")));
        assertEquals(FileCode.OUTSIDE, refused("../".repeat(30_000) + "secret.cuts"));
    }

    @Test
    void a_chain_of_links_is_judged_by_where_it_ends() throws IOException {
        Files.createSymbolicLink(folder.resolve("a"), folder.resolve("b"));
        Files.createSymbolicLink(
                folder.resolve("b"), folder.resolve("below").resolve("..").resolve(".."));
        assertEquals(FileCode.OUTSIDE, refused("a/secret.cuts"));
        Files.createSymbolicLink(folder.resolve("below/c.cuts"), Path.of("..", "d.cuts"));
        Files.createSymbolicLink(folder.resolve("d.cuts"), Path.of("..", "secret.cuts"));
        assertEquals(FileCode.OUTSIDE, refused("below/c.cuts"));
    }

    @Test
    void a_folder_that_leads_to_itself_is_not_followed_for_ever() throws IOException {
        Files.createSymbolicLink(folder.resolve("round"), Path.of("."));
        Found found = FolderSources.of(folder, Limits.DEFAULT).find("round/round/round/streams.cuts", "main.cuts");
        assertEquals("streams.cuts", ((Found.Text) found).text().name());
        Files.createSymbolicLink(folder.resolve("self"), Path.of("self"));
        assertEquals(FileCode.CANNOT_READ, refused("self/streams.cuts"));
    }

    @Test
    void a_file_that_may_not_be_read_is_told() throws IOException {
        Path file = Files.writeString(folder.resolve("mine.cuts"), "mine");
        assumeTrue(Files.getFileStore(file).supportsFileAttributeView("posix"));
        Files.setPosixFilePermissions(file, PosixFilePermissions.fromString("---------"));
        assumeFalse(Files.isReadable(file), "whoever may read everything is not refused");
        assertEquals(FileCode.CANNOT_READ, refused("mine.cuts"));
    }

    @Test
    void a_pipe_is_not_waited_for() throws Exception {
        Path pipe = folder.resolve("pipe.cuts");
        assumeTrue(madePipe(pipe));
        assertEquals(FileCode.MISSING, assertTimeoutPreemptively(NEVER, () -> refused("pipe.cuts")));
        assertEquals("G0101", assertTimeoutPreemptively(NEVER, () -> code(pipe)));
    }

    private static boolean madePipe(Path pipe) throws InterruptedException {
        try {
            return new ProcessBuilder("mkfifo", pipe.toString()).start().waitFor() == 0;
        } catch (IOException noSuchProgram) {
            return false;
        }
    }

    @Test
    void a_device_is_not_read() {
        for (String device : new String[] {"/dev/stdin", "/dev/zero", "/dev/null", "/dev/tty"}) {
            if (Files.exists(Path.of(device)) && !Files.isRegularFile(Path.of(device))) {
                assertEquals("G0101", assertTimeoutPreemptively(NEVER, () -> code(Path.of(device))), device);
            }
        }
    }

    private static String code(Path file) {
        Result<?> result = new SpecCompiler().compile(file);
        return result.diagnostics().get(0).code().id();
    }
}
