package dev.gambrel.compiler.format;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.diagnostic.Result;
import dev.gambrel.text.SourceText;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Whatever is written is laid out and stays so; what a file cannot hold is the only thing refused. */
class FormatLaws {
    /** Pieces that mean something else when they are pushed together or pulled apart. */
    private static final List<String> PIECES = List.of(
            " ",
            " ",
            " ",
            "  ",
            "\t",
            "\u00A0",
            "\n",
            "\n",
            "\r\n",
            "\r",
            ",",
            ",",
            "{",
            "}",
            "(",
            ")",
            "%",
            "±",
            "+/-",
            "+",
            "/",
            "//",
            "-",
            "->",
            "→",
            ">",
            "–",
            ".",
            ".5",
            "1",
            "33.0",
            "1,5",
            "1/2",
            "leg",
            "cut",
            "bone",
            "rest",
            "to",
            "kg",
            "233A",
            "'",
            "\"",
            "\"a  b\"",
            "\\",
            "// note",
            "#",
            "\uFEFF",
            "\u202E",
            "\uD83E\uDD69",
            "\uD83D");

    @Provide
    Arbitrary<String> texts() {
        Arbitrary<String> pushedTogether =
                Arbitraries.of(PIECES).list().ofMaxSize(60).map(pieces -> String.join("", pieces));
        return Arbitraries.oneOf(pushedTogether, Arbitraries.strings().ofMaxLength(60));
    }

    private static Result<String> format(String text) {
        return new SpecFormatter().format(new SourceText("any.cuts", text));
    }

    @Property(tries = 5000)
    void any_text_is_laid_out_unless_a_mark_would_come_to_the_front(@ForAll @From("texts") String text) {
        Result<String> result = format(text);
        boolean markFirst = text.replaceFirst("^[ \t\u00A0\r\n]+", "").startsWith("\uFEFF");
        assertEquals(markFirst, result.value().isEmpty());
    }

    @Property(tries = 5000)
    void what_is_laid_out_stays_as_it_is(@ForAll @From("texts") String text) {
        format(text).value().ifPresent(once -> assertEquals(once, format(once).orElseThrow()));
    }

    @Property(tries = 5000)
    void lines_end_in_a_line_feed_and_two_empty_ones_never_meet(@ForAll @From("texts") String text) {
        format(text).value().ifPresent(formatted -> {
            assertTrue(formatted.isEmpty() || formatted.endsWith("\n"));
            assertFalse(formatted.startsWith("\n") || formatted.endsWith("\n\n") || formatted.contains("\n\n\n"));
            assertFalse(formatted.contains("\r"));
        });
    }
}
