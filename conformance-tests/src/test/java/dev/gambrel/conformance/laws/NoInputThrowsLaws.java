package dev.gambrel.conformance.laws;

import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.internal.KeywordLexer;
import dev.gambrel.compiler.internal.grammar.GambrelLexer;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.compiler.syntax.Keyword;
import dev.gambrel.text.SourceText;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.Combinators;
import net.jqwik.api.Example;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.ShrinkingMode;
import net.jqwik.api.Tuple;
import net.jqwik.api.constraints.IntRange;
import net.jqwik.api.constraints.StringLength;

/** Whatever is in a file, the answer is a tree or findings that a person can read. */
class NoInputThrowsLaws {
    private static final String HEAD = """
            language 1
            use "catalogue:sheep"
            specification "Marram hogget" revision 3 for sheep
            carcass cold, 20 kg to 24 kg
            stream mince, saleable
            """;

    private static final List<String> SIGNS = List.of(
            "{",
            "}",
            "{\n",
            "\n}\n",
            "\n",
            "\n",
            "\n",
            ",",
            ",",
            ",\n",
            "->",
            "→",
            "±",
            "+/-",
            "%",
            "%",
            "/",
            "-",
            "–",
            "(",
            ")",
            "\"",
            "\"as a note\"",
            "\\",
            "//",
            "=",
            ":",
            "#",
            "½",
            "\t",
            "\u00a0",
            "\u202e",
            "\ud83d",
            "😀");
    private static final List<String> FIGURES = List.of(
            "0",
            "1",
            "2",
            "13",
            "33.0",
            "100",
            "100.05",
            "0.05",
            ".5",
            "1/2",
            "1 1/2",
            "1,5",
            "1/0",
            "-1",
            "9".repeat(34),
            "9".repeat(35),
            "0." + "0".repeat(40) + "1",
            "20 kg",
            "20 kg to 24 kg",
            "47 lb 6 oz",
            "33 % ± 0.9 %",
            "21 % to 25 %",
            "180 g",
            "3 mm",
            "4 °C",
            "7 days");
    private static final List<String> NAMES = List.of(
            "leg",
            "shoulder",
            "topside",
            "femur",
            "ribs",
            "carcass",
            "rest",
            "mince",
            "sheep",
            "popliteal",
            "prescapular",
            "silverskin",
            "lumbar",
            "thoracic",
            "US",
            "catalogue:sheep",
            "hogget.cuts",
            "İ",
            "ﬃ");

    private static void isAnswered(String text) {
        Answers.isAnswered(new SpecCompiler().compile(new SourceText("any.cuts", text), Sources.none()), text);
    }

    @Property(tries = 1000)
    void any_text_is_answered(@ForAll @StringLength(max = 200) String text) {
        isAnswered(text);
    }

    @Property(tries = 300)
    void any_text_after_a_sound_beginning_is_answered(@ForAll @StringLength(max = 100) String text) {
        isAnswered(HEAD + text);
    }

    @Provide
    Arbitrary<String> soup() {
        List<String> words = IntStream.rangeClosed(GambrelLexer.LANGUAGE, GambrelLexer.WASTE)
                .mapToObj(KeywordLexer::word)
                .toList();
        return Arbitraries.frequencyOf(
                        Tuple.of(4, Arbitraries.of(words)),
                        Tuple.of(3, Arbitraries.of(SIGNS)),
                        Tuple.of(2, Arbitraries.of(FIGURES)),
                        Tuple.of(2, Arbitraries.of(NAMES)))
                .list()
                .ofMaxSize(80)
                .map(picked -> String.join(" ", picked));
    }

    @Property(tries = 2000)
    void any_soup_of_the_language_s_own_words_is_answered(@ForAll("soup") String soup) {
        isAnswered(soup);
        isAnswered(HEAD + soup);
    }

    @Provide
    Arbitrary<String> linesOfSomeForm() {
        List<String> forms = Stream.of(Keyword.values()).map(Keyword::form).toList();
        Arbitrary<String> form = Arbitraries.oneOf(
                Arbitraries.of(forms),
                Arbitraries.of(forms).map(line -> line + " {"),
                Arbitraries.of("}", "cut leg 33 %, two per carcass {", "cut shoulder 20 % ± 1 % {", "rest -> mince"));
        Arbitrary<String> name = Arbitraries.of(NAMES);
        Arbitrary<String> figure = Arbitraries.of(FIGURES);
        return Combinators.combine(form, name, figure, Arbitraries.integers().between(0, 3))
                .as((line, n, f, how) -> varied(line, n, f, how))
                .list()
                .ofMaxSize(25)
                .map(lines -> String.join("\n", lines));
    }

    private static String varied(String line, String name, String figure, int how) {
        String named = line.replaceFirst("NAME", Matcher.quoteReplacement(name))
                .replaceAll("NAME|STREAM|SPECIES|TITLE|REGION", "mince");
        return switch (how) {
            case 0 -> named.replaceFirst("[0-9.]+ (%|kg|g)", Matcher.quoteReplacement(figure));
            case 1 -> named + ", " + figure;
            default -> named;
        };
    }

    @Property(tries = 2000)
    void any_heap_of_lines_that_could_be_written_is_answered(@ForAll("linesOfSomeForm") String lines) {
        isAnswered(HEAD + lines);
    }

    @Provide
    Arbitrary<Path> written() {
        return Arbitraries.of(Specifications.all());
    }

    @Provide
    Arbitrary<List<Edit>> edits() {
        List<String> put =
                Stream.of(SIGNS, FIGURES, NAMES).flatMap(List::stream).toList();
        return Combinators.combine(
                        Arbitraries.of(Edit.Kind.values()),
                        Arbitraries.integers().between(0, 1_000_000),
                        Arbitraries.integers().between(1, 30),
                        Arbitraries.of(put))
                .as(Edit::new)
                .list()
                .ofMinSize(1)
                .ofMaxSize(4);
    }

    @Property(tries = 3000, shrinking = ShrinkingMode.BOUNDED)
    void a_specification_changed_anywhere_is_answered(@ForAll("written") Path file, @ForAll("edits") List<Edit> edits) {
        String text = Specifications.text(file);
        for (Edit edit : edits) {
            text = edit.of(text);
        }
        Answers.isAnswered(Specifications.compile(file, text), text);
    }

    @Property(tries = 300, shrinking = ShrinkingMode.BOUNDED)
    void a_specification_cut_short_anywhere_is_answered(
            @ForAll("written") Path file, @ForAll @IntRange(max = 1_000_000) int at) {
        String text = Specifications.text(file);
        String part = text.substring(0, at % (text.length() + 1));
        Answers.isAnswered(Specifications.compile(file, part), part);
    }

    /** Found by the laws above: a sign without its figure stopped the program. */
    @Example
    void a_line_that_stops_within_a_figure_is_answered() {
        List.of("source house, -", "cut leg -", "cut leg 33 % ± -", "carcass cold, 20 kg to -", "cut leg 33 % { -")
                .forEach(line -> isAnswered(HEAD + line));
        isAnswered("source house, -");
    }

    @Example
    void every_file_as_it_stands_is_answered() {
        for (Path file : Specifications.all()) {
            String text = Specifications.text(file);
            Answers.isAnswered(Specifications.compile(file, text), text);
        }
    }
}
