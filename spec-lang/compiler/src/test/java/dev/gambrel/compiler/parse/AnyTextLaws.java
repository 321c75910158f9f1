package dev.gambrel.compiler.parse;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.Compiled;
import dev.gambrel.compiler.syntax.Statement;
import dev.gambrel.compiler.syntax.Statement.Declaration;
import dev.gambrel.diagnostic.Diagnostic;
import dev.gambrel.text.Span;
import java.util.List;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.From;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;

/** Whatever is written, it is read or told of. */
class AnyTextLaws {
    private static final List<String> WORDS = List.of(
            "cut",
            "leg",
            "bone",
            "femur",
            "trim",
            "fat",
            "rest",
            "portion",
            "steak",
            "180 g",
            "33 %",
            "±",
            "0.9 %",
            "to",
            "of",
            "carcass",
            ",",
            "->",
            "mince",
            "{",
            "}",
            "\n",
            "\n",
            "\"",
            "\"words\"",
            "(",
            ")",
            "/",
            "-",
            "at most",
            "3 mm",
            "at any point",
            "lb",
            "6 oz",
            "47",
            "ribs 6 to 13",
            "separate",
            "between",
            "rib",
            "lumbar",
            "vertebra",
            "source",
            "also",
            "species",
            "piece",
            "published",
            "two per carcass",
            "boneless",
            "remainder",
            "loss",
            "\uD83E\uDD69",
            "½",
            "\u202E",
            "1/3",
            "22,4",
            "// note",
            "stream",
            "lean 85 %",
            "loss drip",
            "by knife");

    @Provide
    Arbitrary<String> texts() {
        Arbitrary<String> sheets = Arbitraries.of(WORDS).list().ofMaxSize(40).map(words -> String.join(" ", words));
        return Arbitraries.oneOf(sheets, Arbitraries.strings().ofMaxLength(60));
    }

    @Property(tries = 2000)
    void every_text_is_read_with_places_that_lie_in_it(@ForAll @From("texts") String text) {
        Parsed parsed = Parsed.of(text);
        parsed.underlined();
        parsed.file().statements().forEach(statement -> inside(statement, new Span(0, text.length())));
    }

    private static void inside(Statement statement, Span around) {
        Span span = statement.span();
        assertTrue(span.start() >= around.start() && span.end() <= around.end());
        if (statement instanceof Declaration line) {
            assertEquals(span.start(), line.keywordSpan().start());
            line.body().forEach(inner -> inside(inner, new Span(0, around.end())));
        }
    }

    @Property(tries = 2000)
    void every_text_is_compiled_or_told_of_in_sentences(@ForAll @From("texts") String text) {
        for (Diagnostic finding : Compiled.sheet(text).diagnostics()) {
            assertTrue(finding.message().endsWith("."), finding.message());
            assertFalse(finding.message().contains("null"), finding.message());
        }
    }

    @Property(tries = 300)
    void the_same_text_gives_the_same_answer(@ForAll @From("texts") String text) {
        assertEquals(Compiled.sheet(text), Compiled.sheet(text));
    }
}
