package dev.gambrel.conformance.corpus;

import static org.junit.jupiter.api.Assertions.assertTrue;

import dev.gambrel.compiler.Compilation;
import dev.gambrel.compiler.SpecCompiler;
import dev.gambrel.compiler.source.Sources;
import dev.gambrel.diagnostic.Result;
import dev.gambrel.diagnostic.TreePath;
import dev.gambrel.text.SourceText;
import dev.gambrel.text.TradeName;
import dev.gambrel.yields.conformance.Conformance;
import dev.gambrel.yields.conformance.ConformanceCode;
import dev.gambrel.yields.conformance.Conformity;
import dev.gambrel.yields.conformance.Question;
import dev.gambrel.yields.conformance.report.ComparedTexts;
import dev.gambrel.yields.conformance.report.ConformitySheet;
import dev.gambrel.yields.conformance.report.ConformityText;
import dev.gambrel.yields.working.Working;
import java.nio.file.Path;
import java.util.Arrays;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** A small pair of texts for each kind of answer, with the whole answer beside it. */
class ConformityCasesTest {
    private static final String BUYER = """
            language 1
            use "catalogue:sheep"
            requirement "Wanted by Harbour Table" revision 1 for sheep
            """;

    static List<Path> pairs() {
        return Corpus.in(Corpus.folder("conformity"), file -> file.toString().endsWith(".txt"));
    }

    @ParameterizedTest
    @MethodSource("pairs")
    void a_pair_is_answered_as_expected(Path pair) {
        String answer = answer(Corpus.read(pair));
        String code = pair.getFileName().toString().substring(0, 5);
        assertTrue(answer.contains(code), answer);
        Corpus.hold(answer, Corpus.twin(pair));
    }

    @Test
    void every_kind_of_answer_has_a_pair() {
        List<String> announced = pairs().stream()
                .map(pair -> pair.getFileName().toString().substring(0, 5))
                .toList();
        for (ConformanceCode code : ConformanceCode.values()) {
            assertTrue(announced.contains(code.id()), code.id());
        }
    }

    private static String answer(String pair) {
        int houseAt = pair.indexOf("house\n");
        int buyerAt = pair.indexOf("\nbuyer\n");
        Compilation house = compiled("house.cuts", pair.substring(houseAt + 6, buyerAt + 1));
        Compilation buyer = compiled("buyer.cuts", pair.substring(buyerAt + 7));
        Result<Conformity> result = Conformance.of(house.tree(), buyer.tree(), question(pair.substring(0, houseAt)));
        var texts = new ComparedTexts(
                new ComparedTexts.Text("house.cuts", place -> house.origins().written(place)),
                new ComparedTexts.Text("buyer.cuts", place -> buyer.origins().written(place)));
        String told = result.value()
                .map(conformity -> codes(conformity) + ConformityText.of(ConformitySheet.of(conformity, texts)))
                .orElse("");
        return Corpus.report(result.diagnostics()) + told;
    }

    /** What is met is told in one line, so its code stands before. */
    private static String codes(Conformity conformity) {
        return Corpus.codes(conformity.answers().stream()
                        .map(answer -> answer.reason())
                        .toList()) + "\n";
    }

    private static Question question(String match) {
        if (match.isEmpty()) {
            return Question.PLAIN;
        }
        String[] sides = match.strip().substring("match ".length()).split("=", 2);
        return new Question(Map.of(path(sides[0]), path(sides[1])), List.of(), Working.AS_WRITTEN);
    }

    private static TreePath path(String side) {
        return new TreePath(Arrays.stream(side.split("/"))
                .map(String::strip)
                .map(TradeName::of)
                .toList());
    }

    private static Compilation compiled(String name, String body) {
        String text = body.startsWith("language")
                ? body
                : name.startsWith("house") ? Sheets.hogget(body + "rest -> mince\n") : BUYER + body;
        return new SpecCompiler()
                .compile(new SourceText(name, text), Sources.none())
                .orElseThrow();
    }
}
