package dev.gambrel.compiler.source;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import dev.gambrel.limits.Limits;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FolderSourcesTest {
    private static final Limits SMALL = new Limits(20, 100, 50, 8, 20_000, 50_000, 50);

    @TempDir
    Path around;

    private Path folder;

    @BeforeEach
    void lay_out_the_folders() throws IOException {
        folder = Files.createDirectories(around.resolve("house"));
        Files.createDirectories(folder.resolve("below"));
        write(around.resolve("secret.cuts"), "secret");
        write(folder.resolve("streams.cuts"), "streams");
        write(folder.resolve("below/notes.cuts"), "notes");
    }

    private static void write(Path file, String text) throws IOException {
        Files.write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    private Found find(String name) throws IOException {
        return find(name, "main.cuts");
    }

    private Found find(String name, String user) throws IOException {
        return FolderSources.of(folder, SMALL).find(name, user);
    }

    private static String text(Found found) {
        var text = ((Found.Text) found).text();
        return text.name() + ": " + text.text();
    }

    private static FileCode refused(Found found) {
        return ((Found.Refused) found).code();
    }

    @Test
    void files_are_found_from_the_file_that_uses_them() throws IOException {
        assertEquals("streams.cuts: streams", text(find("streams.cuts")));
        assertEquals("below/notes.cuts: notes", text(find("below/notes.cuts")));
        assertEquals("below/notes.cuts: notes", text(find("notes.cuts", "below/all.cuts")));
        assertEquals("streams.cuts: streams", text(find("../streams.cuts", "below/all.cuts")));
        assertEquals("streams.cuts: streams", text(find("./below/../streams.cuts")));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "../secret.cuts", "below/../../secret.cuts", "/etc/passwd", "/secret.cuts", "..\\secret.cuts",
                "below\\notes.cuts", "C:secret.cuts", "C:/secret.cuts", "file:secret.cuts", "../house/../secret.cuts",
                "streams.cuts:stream"
            })
    void nothing_outside_the_folder_is_looked_at(String name) throws IOException {
        assertEquals(FileCode.OUTSIDE, refused(find(name)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"nul.cuts", "NUL", "con.cuts", "Aux.cuts", "prn.x.cuts", "com1.cuts", "below/LPT9.cuts"})
    void a_name_that_means_a_device_somewhere_is_never_opened(String name) throws IOException {
        Path file = folder.resolve(name);
        write(file, "device");
        assertEquals(FileCode.OUTSIDE, refused(find(name)));
    }

    @ParameterizedTest
    @ValueSource(strings = {"nulls.cuts", "com.cuts", "com10.cuts", "console.cuts"})
    void a_name_that_only_begins_like_a_device_is_a_name(String name) throws IOException {
        write(folder.resolve(name), "words");
        assertEquals(name + ": words", text(find(name)));
    }

    @Test
    void a_link_that_leads_out_is_not_followed() throws IOException {
        Files.createSymbolicLink(folder.resolve("link.cuts"), around.resolve("secret.cuts"));
        Files.createSymbolicLink(folder.resolve("out"), around);
        assertEquals(FileCode.OUTSIDE, refused(find("link.cuts")));
        assertEquals(FileCode.OUTSIDE, refused(find("out/secret.cuts")));
    }

    @Test
    void a_link_that_stays_inside_is_the_file_that_it_leads_to() throws IOException {
        Files.createSymbolicLink(folder.resolve("link.cuts"), folder.resolve("streams.cuts"));
        assertEquals("streams.cuts: streams", text(find("link.cuts")));
        Files.createSymbolicLink(around.resolve("way-in"), folder);
        Sources through = FolderSources.of(around.resolve("way-in"), SMALL);
        assertEquals("streams.cuts: streams", text(through.find("streams.cuts", "main.cuts")));
    }

    @Test
    void a_link_that_goes_round_is_not_followed_for_ever() throws IOException {
        Files.createSymbolicLink(folder.resolve("a.cuts"), folder.resolve("b.cuts"));
        Files.createSymbolicLink(folder.resolve("b.cuts"), folder.resolve("a.cuts"));
        assertEquals(FileCode.CANNOT_READ, refused(find("a.cuts")));
    }

    @Test
    void only_specification_files_are_opened() throws IOException {
        write(folder.resolve("prices.txt"), "prices");
        write(folder.resolve("cuts"), "cuts");
        write(folder.resolve("streams.CUTS"), "capitals");
        Files.createDirectories(folder.resolve("folder.cuts"));
        for (String name :
                new String[] {"prices.txt", "cuts", "folder.cuts", "below", ".", "", "none.cuts", "a\0.cuts"}) {
            assertEquals(FileCode.MISSING, refused(find(name)), name);
        }
    }

    @Test
    void a_link_to_something_else_is_no_specification() throws IOException {
        write(folder.resolve("prices.txt"), "prices");
        Files.createSymbolicLink(folder.resolve("link.cuts"), folder.resolve("prices.txt"));
        assertEquals(FileCode.MISSING, refused(find("link.cuts")));
    }

    @Test
    void a_file_of_the_limit_is_read_and_a_larger_one_is_not() throws IOException {
        write(folder.resolve("edge.cuts"), "x".repeat(20));
        write(folder.resolve("over.cuts"), "x".repeat(21));
        assertEquals("edge.cuts: " + "x".repeat(20), text(find("edge.cuts")));
        assertEquals(new Found.Refused(FileCode.TOO_LARGE, 21), find("over.cuts"));
    }

    @Test
    void bytes_are_counted_and_not_characters() throws IOException {
        write(folder.resolve("edge.cuts"), "é".repeat(10));
        write(folder.resolve("over.cuts"), "é".repeat(11));
        assertEquals("edge.cuts: " + "é".repeat(10), text(find("edge.cuts")));
        assertEquals(FileCode.TOO_LARGE, refused(find("over.cuts")));
    }

    @Test
    void a_limit_of_any_size_can_be_set() {
        Limits vast = new Limits(Integer.MAX_VALUE, 100, 50, 8, 20_000, 50_000, 50);
        assertEquals("s: streams", text(FolderSources.read(folder.resolve("streams.cuts"), "s", vast)));
    }

    @Test
    void what_is_not_utf_8_is_not_guessed_at() throws IOException {
        byte[][] texts = {
            {'l', (byte) 0xE9, 'g'},
            {(byte) 0xC0, (byte) 0xAF},
            {(byte) 0xED, (byte) 0xA0, (byte) 0x80},
            {(byte) 0xFF, (byte) 0xFE, 'l', 0},
            {'l', (byte) 0xE2, (byte) 0x82}
        };
        for (byte[] bytes : texts) {
            Files.write(folder.resolve("latin.cuts"), bytes);
            assertEquals(FileCode.NOT_TEXT, refused(find("latin.cuts")));
        }
    }

    @Test
    void a_byte_order_mark_is_no_part_of_the_text() throws IOException {
        write(folder.resolve("mark.cuts"), "\uFEFFlanguage 1");
        assertEquals("mark.cuts: language 1", text(find("mark.cuts")));
        write(folder.resolve("mark.cuts"), "");
        assertEquals("mark.cuts: ", text(find("mark.cuts")));
    }

    @Test
    void a_folder_that_is_not_there_has_no_files() {
        assertThrows(IOException.class, () -> FolderSources.of(around.resolve("nowhere"), SMALL));
    }
}
