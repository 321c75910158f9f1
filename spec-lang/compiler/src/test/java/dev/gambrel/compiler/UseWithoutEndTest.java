package dev.gambrel.compiler;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.source.FileCode;
import dev.gambrel.compiler.source.Found;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.limits.Limits;
import dev.gambrel.text.SourceText;
import java.util.List;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;

/** However many lines ask for files, no more is looked into than the limits let through. */
class UseWithoutEndTest {
    private static final int FULL = 40_000;
    private static final Limits THREE_FILES = new Limits(FULL, 100, 3, 8, 20_000, 50_000, 50);

    /** Says how often it was asked. */
    private static final class Counting implements Sources {
        private final Found answer;
        private int asked;

        private Counting(Found answer) {
            this.answer = answer;
        }

        @Override
        public Found find(String name, String user) {
            asked++;
            return answer;
        }
    }

    private static List<String> codes(int lines, Counting sources) {
        String uses = IntStream.range(0, lines)
                .mapToObj(i -> "use \"" + "./".repeat(i % 7) + "streams.cuts\"\n")
                .collect(Collectors.joining());
        SourceText text = new SourceText("hogget.cuts", "language 1\n" + uses);
        return new SpecCompiler(THREE_FILES)
                .compile(text, sources).diagnostics().stream()
                        .map(Diagnostic::code)
                        .map(code -> code.id())
                        .distinct()
                        .toList();
    }

    @Test
    void a_full_file_is_not_read_for_each_line_that_names_it() {
        String full = "language 1\n//" + "x".repeat(FULL - 13);
        Counting sources = new Counting(new Found.Text(new SourceText("streams.cuts", full)));
        List<String> codes = codes(1_000, sources);
        assertTrue(codes.contains(FileCode.TOO_MANY_FILES.id()), codes::toString);
        assertEquals(4, sources.asked);
    }

    @Test
    void a_file_that_is_no_text_is_not_read_for_each_line_that_names_it() {
        Counting sources = new Counting(new Found.Refused(FileCode.NOT_TEXT, 0));
        assertTrue(codes(1_000, sources).contains(FileCode.TOO_MANY_FILES.id()));
        assertEquals(4, sources.asked);
    }

    @Test
    void a_small_file_may_be_named_often() {
        Counting sources = new Counting(new Found.Text(new SourceText("streams.cuts", "language 1\n")));
        assertTrue(!codes(1_000, sources).contains(FileCode.TOO_MANY_FILES.id()));
        assertEquals(1_000, sources.asked);
    }

    @Test
    void nothing_is_asked_for_once_there_are_too_many_lines() {
        Counting sources = new Counting(new Found.Text(new SourceText("streams.cuts", "language 1\n")));
        Limits few = new Limits(FULL, 100, 50, 8, 5, 50_000, 50);
        SourceText text = new SourceText("hogget.cuts", "language 1\n" + "use \"a.cuts\"\n".repeat(6));
        new SpecCompiler(few).compile(text, sources);
        assertEquals(0, sources.asked);
    }
}
