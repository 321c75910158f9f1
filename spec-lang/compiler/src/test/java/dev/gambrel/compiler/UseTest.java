package dev.gambrel.compiler;

import static dev.gambrel.compiler.Compiled.codes;
import static dev.gambrel.compiler.Compiled.messages;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.source.FileCode;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.SourceText;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class UseTest {
    private static final String SHEET = """
            species sheep
            specification "Marram hogget" revision 3 for sheep
            carcass cold
            cut leg 33 %
            rest -> mince
            """;
    private static final String STREAMS = "language 1\nstream mince, saleable\n";

    @TempDir
    Path folder;

    private static Result<Compilation> compile(Limits limits, Map<String, String> files) {
        SourceText main = new SourceText("main.cuts", files.get("main.cuts"));
        return new SpecCompiler(limits).compile(main, Compiled.files(files));
    }

    private static Result<Compilation> compile(Map<String, String> files) {
        return compile(Limits.DEFAULT, files);
    }

    @Test
    void what_another_file_declares_is_known() {
        var result =
                compile(Map.of("main.cuts", "language 1\nuse \"streams.cuts\"\n" + SHEET, "streams.cuts", STREAMS));
        assertEquals(List.of(), messages(result));
        assertEquals(
                List.of("streams.cuts", "main.cuts"),
                result.orElseThrow().texts().stream().map(SourceText::name).toList());
    }

    @Test
    void a_file_that_is_used_twice_is_read_once() {
        List<String> asked = new ArrayList<>();
        Map<String, String> files = Map.of(
                "a.cuts", "language 1\nuse \"streams.cuts\"\n",
                "b.cuts", "language 1\nuse \"streams.cuts\"\n",
                "streams.cuts", STREAMS);
        Sources counted = (name, user) -> {
            asked.add(name);
            return Compiled.files(files).find(name, user);
        };
        String main = "language 1\nuse \"a.cuts\"\nuse \"b.cuts\"\nuse \"streams.cuts\"\n" + SHEET;
        var result = new SpecCompiler().compile(new SourceText("main.cuts", main), counted);
        assertEquals(List.of(), messages(result));
        assertEquals(4, result.orElseThrow().texts().size());
        assertEquals(3, asked.stream().filter("streams.cuts"::equals).count());
    }

    @Test
    void a_file_that_uses_itself_is_told_the_way_round() {
        var result = compile(Map.of(
                "main.cuts", "language 1\nuse \"a.cuts\"\n" + SHEET,
                "a.cuts", "language 1\nuse \"b.cuts\"\n",
                "b.cuts", "language 1\nuse \"main.cuts\"\n"));
        assertEquals(List.of("“main.cuts” uses itself in the end."), messages(result));
        assertEquals("b.cuts:2", Compiled.line(result.diagnostics().get(0)));
        assertEquals(
                List.of("It goes round: main.cuts uses a.cuts uses b.cuts uses main.cuts."),
                result.diagnostics().get(0).notes());
    }

    @Test
    void a_file_cannot_use_itself_directly() {
        assertEquals(
                List.of(FileCode.CIRCULAR),
                codes(compile(Map.of("main.cuts", "language 1\nuse \"main.cuts\"\n" + SHEET))));
    }

    @Test
    void what_a_missing_file_may_have_declared_is_not_told_as_unknown() {
        var result = compile(Map.of("main.cuts", "language 1\nuse \"streams.cuts\"\n" + SHEET));
        assertEquals(List.of("There is no specification file “streams.cuts” here."), messages(result));
        assertEquals(
                "\"streams.cuts\"", Compiled.underlined(result.diagnostics().get(0)));
    }

    @Test
    void files_use_files_as_deep_as_the_limit_says() {
        Map<String, String> files = new HashMap<>();
        files.put("main.cuts", "language 1\nuse \"2.cuts\"\n" + SHEET);
        files.put("2.cuts", "language 1\nuse \"3.cuts\"\n");
        files.put("3.cuts", STREAMS);
        assertEquals(List.of(), messages(compile(new Limits(1 << 20, 100, 50, 3, 20_000, 50_000, 50), files)));
        assertEquals(
                List.of("Files use files 3 deep here; at most 2 are taken."),
                messages(compile(new Limits(1 << 20, 100, 50, 2, 20_000, 50_000, 50), files)));
    }

    @Test
    void as_many_files_are_used_as_the_limit_says() {
        Map<String, String> files = new HashMap<>();
        files.put("main.cuts", "language 1\nuse \"a.cuts\"\nuse \"streams.cuts\"\n" + SHEET);
        files.put("a.cuts", "language 1\n");
        files.put("streams.cuts", STREAMS);
        assertEquals(List.of(), messages(compile(new Limits(1 << 20, 100, 3, 8, 20_000, 50_000, 50), files)));
        assertEquals(
                List.of("There are more than 2 files in use."),
                messages(compile(new Limits(1 << 20, 100, 2, 8, 20_000, 50_000, 50), files)));
    }

    @Test
    void findings_of_what_is_used_come_before_those_of_what_uses_it() {
        var result = compile(Map.of(
                "main.cuts", "language 1\nuse \"streams.cuts\"\n" + SHEET + "cut loin 12 kg\n",
                "streams.cuts", STREAMS + "stream bones, by-product, lean 85\nstream fat, saleable, lean 10 mm\n"));
        assertEquals(
                List.of("streams.cuts:3", "streams.cuts:4", "main.cuts:8"),
                result.diagnostics().stream().map(Compiled::line).toList());
    }

    @Test
    void a_stranger_may_use_nothing_but_the_catalogue() {
        var result = Compiled.text("language 1\nuse \"catalogue:sheep\"\nuse \"streams.cuts\"\n");
        assertEquals(List.of("“streams.cuts” lies outside the folder of this specification."), messages(result));
    }

    @Test
    void a_file_in_a_folder_below_uses_files_from_where_it_lies() throws IOException {
        Files.createDirectories(folder.resolve("house/more"));
        Files.writeString(folder.resolve("main.cuts"), "language 1\nuse \"house/all.cuts\"\n" + SHEET);
        Files.writeString(
                folder.resolve("house/all.cuts"), "language 1\nuse \"more/streams.cuts\"\nuse \"../notes.cuts\"\n");
        Files.writeString(folder.resolve("house/more/streams.cuts"), STREAMS);
        Files.writeString(folder.resolve("notes.cuts"), "language 1\nnote \"knife and saw\"\n");
        var result = new SpecCompiler().compile(folder.resolve("main.cuts"));
        assertEquals(List.of(), messages(result));
        assertEquals(
                List.of("house/more/streams.cuts", "notes.cuts", "house/all.cuts", "main.cuts"),
                result.orElseThrow().texts().stream().map(SourceText::name).toList());
    }

    @Test
    void one_file_asked_for_in_two_ways_is_one_file() throws IOException {
        Files.createDirectories(folder.resolve("house"));
        Files.writeString(
                folder.resolve("main.cuts"),
                "language 1\nuse \"streams.cuts\"\nuse \"house/../streams.cuts\"\n" + SHEET);
        Files.writeString(folder.resolve("streams.cuts"), STREAMS);
        var result = new SpecCompiler().compile(folder.resolve("main.cuts"));
        assertEquals(List.of(), messages(result));
        assertTrue(result.orElseThrow().texts().size() == 2);
    }
}
